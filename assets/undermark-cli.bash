# bash completion for undermark-cli                          -*- shell-script -*-
# SPDX-License-Identifier: GPL-3.0-or-later
# The program itself knows what may stand where; "/" is its word for a file.
_undermark_cli()
{
    local words=("${COMP_WORDS[@]:1:COMP_CWORD}")
    words=("${words[@]//[\\\'\"]/}")   # without the marks that keep two words one name
    mapfile -t COMPREPLY < <("$1" complete -- "${words[@]}" 2> /dev/null)
    if [ "${COMPREPLY[*]}" = / ]; then
        COMPREPLY=()
        compopt -o default
    elif [ ${#COMPREPLY[@]} -gt 0 ] && [[ ${COMP_WORDS[COMP_CWORD]} != [\'\"]* ]]; then
        mapfile -t COMPREPLY < <(printf '%q\n' "${COMPREPLY[@]}")
    fi
}
complete -F _undermark_cli undermark-cli
