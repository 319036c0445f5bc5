// SPDX-License-Identifier: GPL-3.0-or-later
//
// The Tank page: level curve, gauge table, hidden reserve with its evidence, and
// the guided calibration.
#pragma once

#include "app/screen/base/page_model.h"
#include "app/screen/base/tank_choice.h"
#include "app/screen/logbook/entry_form.h"
#include "app/screen/tank/calibration_guide.h"
#include "app/screen/tank/car_sheet.h"
#include "engine/calibration/gauge_table.h"

#include <QObject>
#include <qqmlintegration.h>

namespace undermark {

class TankViewModel : public PageModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(bool known READ known NOTIFY changed FINAL)
    Q_PROPERTY(bool calibrated READ calibrated NOTIFY changed FINAL)
    Q_PROPERTY(undermark::PlotPicture plot READ plot NOTIFY changed FINAL)
    Q_PROPERTY(undermark::PlotPicture secondPlot READ secondPlot NOTIFY changed FINAL)
    Q_PROPERTY(bool hasTable READ hasTable NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> curveFacts READ curveFacts NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::NoticeText> findings READ findings NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> table READ table NOTIFY changed FINAL)
    Q_PROPERTY(QString tableNote READ tableNote NOTIFY changed FINAL)
    Q_PROPERTY(QString tableUnit READ tableUnit NOTIFY changed FINAL)
    Q_PROPERTY(QString tableSize READ tableSize NOTIFY changed FINAL)
    Q_PROPERTY(QString tableDecimals READ tableDecimals NOTIFY changed FINAL)
    Q_PROPERTY(QString tableDone READ tableDone NOTIFY changed FINAL)
    Q_PROPERTY(QString sheetDone READ sheetDone NOTIFY changed FINAL)
    Q_PROPERTY(QString reserve READ reserve NOTIFY changed FINAL)
    Q_PROPERTY(QString pastZero READ pastZero NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Fact> evidence READ evidence NOTIFY changed FINAL)
    Q_PROPERTY(QString nextProof READ nextProof NOTIFY changed FINAL)
    Q_PROPERTY(QString nextProofCaution READ nextProofCaution NOTIFY changed FINAL)
    Q_PROPERTY(undermark::CalibrationGuide* guide READ guide CONSTANT FINAL)
    Q_PROPERTY(undermark::CarSheet* sheet READ sheet CONSTANT FINAL)
    Q_PROPERTY(undermark::EntryForm* proof READ proof CONSTANT FINAL)
    Q_PROPERTY(bool proving READ proving NOTIFY changed FINAL)
    Q_PROPERTY(QList<undermark::Choice> tanks READ tanks NOTIFY changed FINAL)

public:
    // Of the page, in their order.
    enum Tab { Curve, Table, Reserve, Sheet, Calibrate };
    Q_ENUM(Tab)

    // `car` outlives the view model.
    explicit TankViewModel(Car& car, Units units = {}, QObject* parent = nullptr);

    bool known() const { return m_known.has_value(); } // else findings() says why
    bool calibrated() const { return m_known && m_known->gauge.isKnown(); }
    PlotPicture plot() const;       // two signals: of the lobe with the pump
    PlotPicture secondPlot() const; // and of the other one; else empty
    bool hasTable() const { return m_known && m_known->gauge.curve(); }
    QList<Fact> curveFacts() const;
    QList<NoticeText> findings() const;
    QList<Fact> table() const; // signal by value
    QString tableNote() const;
    QString tableUnit() const;
    QString tableSize() const;
    QString tableDecimals() const;
    QString tableDone() const { return m_tableDone; } // what copy or export has done
    QString sheetDone() const { return m_sheetDone; } // what became of the hand-over sheet
    QString reserve() const;
    QString pastZero() const;
    QList<Fact> evidence() const; // what was seen, by what it made of the reserve
    QString nextProof() const;
    QString nextProofCaution() const;
    CalibrationGuide* guide() { return &m_guide; }
    CarSheet* sheet() { return &m_sheet; }
    EntryForm* proof() { return &m_proof; }
    bool proving() const { return m_proving; } // a proof is being told
    // Which one all of the page is about; with one tank none.
    QList<Choice> tanks() const { return m_tanks.choices(); }

    void refresh() override;
    void startOver() override; // with that car's calibration, if one lies open
    void setFormat(const UnitFormat& format) override;
    Q_INVOKABLE void selectTank(int option); // of tanks()
    // Opens the form of the proof that nextProof() tells of, or of any.
    Q_INVOKABLE void tellNextProof();
    Q_INVOKABLE void tellProof();
    Q_INVOKABLE void leaveProof();
    Q_INVOKABLE void changeTableSize(int by);
    Q_INVOKABLE void changeTableDecimals(); // 0, 1, 2, and 0 again
    Q_INVOKABLE void switchTableUnit();
    Q_INVOKABLE void copyTable();
    // Writes gauge-table.csv beside the logbook; of a further tank gauge-table-NAME.csv.
    Q_INVOKABLE void exportTable();

    // Writes hand-over-sheet.pdf beside the logbook; of a further tank hand-over-sheet-NAME.pdf.
    Q_INVOKABLE void writeSheet();

signals:
    void changed();

private:
    void changeTable();
    QString verifiedText() const;
    void tell(ProofKind kind);
    const GaugeTable* gauge() const; // nothing without a curve
    QString tableText() const; // as CSV, in the file's own form: point, no unit

    Car& m_car;
    UnitFormat m_format;
    TankChoice m_tanks;
    std::optional<CarKnowledge> m_known; // the car of that tank alone
    std::optional<Error> m_unknown; // why it is
    CalibrationGuide m_guide;
    CarSheet m_sheet;
    EntryForm m_proof;
    bool m_proving = false;
    mutable std::optional<PlotPicture> m_plot; // both made when first looked at
    GaugeTableRequest m_request;
    mutable std::optional<GaugeTable> m_table;
    mutable bool m_tableMade = false;
    QString m_tableDone;
    QString m_sheetDone;
};

} // namespace undermark
