// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Now page: how far the car goes, in words and numbers ready to show.
// Always valid: where the car cannot answer, `known` is false and the reason
// is the first notice.
#pragma once

#include "app/car/car.h"
#include "app/screen/base/fact.h"
#include "app/screen/base/horizon_picture.h"
#include "app/screen/base/notice_text.h"
#include "app/screen/base/page_model.h"

#include <QObject>
#include <QStringList>
#include <qqmlintegration.h>

namespace undermark {

// One line of the table: a place (zero mark, dry) and its three distances.
struct RangeRow {
    Q_GADGET
    QML_VALUE_TYPE(rangeRow)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString sure MEMBER sure FINAL)
    Q_PROPERTY(QString even MEMBER even FINAL)
    Q_PROPERTY(QString hopeful MEMBER hopeful FINAL)
public:
    QString name;
    QString sure;
    QString even;
    QString hopeful;
    friend bool operator==(const RangeRow&, const RangeRow&) = default;
};

class NowViewModel : public PageModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(bool known READ known NOTIFY changed FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QString sinceFill READ sinceFill NOTIFY changed FINAL)
    Q_PROPERTY(QString sureNumber READ sureNumber NOTIFY changed FINAL)
    Q_PROPERTY(QString distanceUnit READ distanceUnit NOTIFY changed FINAL)
    Q_PROPERTY(undermark::RangeRow toZero READ toZero NOTIFY changed FINAL)
    Q_PROPERTY(undermark::RangeRow toDry READ toDry NOTIFY changed FINAL)
    Q_PROPERTY(undermark::HorizonPicture horizon READ horizon NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> facts READ facts NOTIFY changed FINAL)
    Q_PROPERTY(QString why READ why NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> notices READ notices NOTIFY changed FINAL)
    Q_PROPERTY(QList<QString> modes READ modes NOTIFY changed FINAL)
    Q_PROPERTY(int modeIndex READ modeIndex NOTIFY changed FINAL)

public:
    // `car` outlives the view model. Asks the car once.
    explicit NowViewModel(Car& car, Units units = {}, QObject* parent = nullptr);

    bool known() const { return m_state.has_value(); }
    QString title() const;     // the vehicle
    QString sinceFill() const; // empty where it is not known
    QString sureNumber() const;
    QString distanceUnit() const { return m_format.distanceUnit(); }
    RangeRow toZero() const;
    RangeRow toDry() const;
    HorizonPicture horizon() const { return m_horizon; }
    QList<Fact> facts() const;
    QString why() const;
    QList<NoticeText> notices() const { return noticeTexts(m_notices, m_format); }
    QStringList modes() const;
    int modeIndex() const;
    void setFormat(const UnitFormat& format) override;
    void refresh() override;
    void startOver() override; // in the mode that the other car was last driven in
    // Asks in another driving mode; indices outside modes() are ignored.
    Q_INVOKABLE void selectMode(int index);

signals:
    void changed();

private:
    void ask(const std::string& mode);
    RangeRow row(const QString& name, const RangeLaw& law) const;

    Car& m_car;
    UnitFormat m_format;
    std::optional<NowState> m_state;
    HorizonPicture m_horizon;
    std::vector<Notice> m_notices;
};

} // namespace undermark
