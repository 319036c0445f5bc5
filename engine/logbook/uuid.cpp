// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/logbook/uuid.h"

#include <boost/uuid/random_generator.hpp>
#include <boost/uuid/uuid_io.hpp>

namespace undermark::logbook {

std::string newUuid()
{
    // The pure generator asks the operating system each time: no seed to share,
    // and none to inherit when a program forks.
    return to_string(boost::uuids::random_generator_pure()());
}

} // namespace undermark::logbook
