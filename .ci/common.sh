# shellcheck shell=bash
# SPDX-License-Identifier: GPL-3.0-or-later
#
# What app/run, tests/run and tests/bench/run share. Sourced, with `root` set to
# the top of the source tree.

: "${root:?set it to the top of the source tree}"

say() { printf '%s\n' "$*" >&2; }

# Configures build folder $1 by preset $2 unless that is done already; further
# arguments are cache settings (-DNAME=VALUE) that must hold. Says nothing unless
# it fails.
configure() {
  local folder=$root/$1 preset=$2 log setting satisfied=yes fresh=()
  shift 2
  local cache=$folder/CMakeCache.txt
  if [[ -f $cache ]] && ! grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$root" "$cache"; then
    say "The build folder ${folder##*/}/ was made for a source tree at another place: starting it afresh."
    fresh=(--fresh)
    satisfied=no
  fi
  if [[ ! -f $folder/build.ninja ]]; then
    satisfied=no
  else
    for setting in "$@"; do
      grep -q "^${setting%%=*}:[A-Z]*=${setting#*=}$" <(sed 's/^/-D/' "$cache") || satisfied=no
    done
  fi
  [[ $satisfied == yes ]] && return 0
  mkdir -p "$folder"
  log=$folder/configure.log
  if ! cmake -S "$root" --preset "$preset" "${fresh[@]}" "$@" >"$log" 2>&1; then
    cat "$log" >&2
    say "Configuring ${folder##*/}/ failed; the lines above are what CMake said."
    return 1
  fi
}

# Builds targets $2... in build folder $1. One build at a time in a folder; says
# nothing when there is nothing to do.
build() {
  local folder=$root/$1
  shift
  (
    flock 9
    # A dry run tells whether there is anything to announce.
    plan=$(ninja -C "$folder" -n "$@" 2>/dev/null || true)
    if [[ $plan != *'no work to do'* ]]; then
      say "Building ${*} in ${folder##*/}/ (the first time takes a few minutes)."
      cmake --build "$folder" --target "$@" >&2
    fi
  ) 9>"$folder/.building"
}
