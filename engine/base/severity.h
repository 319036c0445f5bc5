// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace undermark {

// Of whatever is said about data: worth knowing, to be looked at, in the way of an answer.
enum class Severity { info, warning, error };

} // namespace undermark
