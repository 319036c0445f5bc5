# SPDX-License-Identifier: GPL-3.0-or-later
#
# cmake -DSOURCE=ROOT -DOUT=FILE.cpp -P commit.cmake, at every build: which commit this is, as
# git says, or as app/package has written it into a copy without git. FILE is only written
# where that is another one, so that nothing is compiled again without need.
if(EXISTS ${SOURCE}/debian/commit)
  file(STRINGS ${SOURCE}/debian/commit commit LIMIT_COUNT 1)
else()
  execute_process(COMMAND git -C ${SOURCE} --no-optional-locks describe --always --dirty --abbrev=10 --exclude=*
                  OUTPUT_VARIABLE commit OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
endif()
if(NOT commit)
  set(commit unknown)
endif()
file(CONFIGURE OUTPUT ${OUT} CONTENT [[
#include "app/version.h"

namespace undermark {

const char* const kCommit = "@commit@";

} // namespace undermark
]] @ONLY)
