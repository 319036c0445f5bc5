// SPDX-License-Identifier: GPL-3.0-or-later
//
// A tester among control units that answer anything at any time: ten bytes a frame.
#include "engine/signals/obd_conversation.h"
#include "tests/fuzz/fuzz_input.h"

#include <algorithm>

using namespace undermark;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    constexpr std::size_t kFrame = 10;
    ObdConversation tester(ObdConversation::Part::asks, FuelKind::petrol);
    std::vector<TimedValue> values;
    Seconds now{}, asked{-1};
    for (; size >= kFrame; data += kFrame, size -= kFrame) {
        now += Seconds(0.01 * (data[0] >> 4));
        TimedFrame heard;
        heard.frame = {.id = 0x7E8u + (data[0] & 7u), .length = static_cast<std::uint8_t>(data[1] % 9)};
        if ((data[0] & 8) != 0)
            heard.frame = {.id = 0x18DAF100u + (data[0] & 7u), .extended = true, .length = heard.frame.length};
        std::copy_n(data + 2, 8, heard.frame.data.begin());
        tester.hear(heard, now, values);
        int sent = 0;
        while (const auto frame = tester.next(now)) {
            fuzz::require(++sent <= 2 && frame->length == 8);
            if (frame->data[0] == 2) {
                fuzz::require((now - asked).count() > 0.199);
                asked = now;
            }
        }
    }
    for (const TimedValue& value : values)
        fuzz::require(isPossible(value.channel, value.value) && value.goodFor.count() <= 75.0);
    return 0;
}
