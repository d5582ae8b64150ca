# shellcheck shell=bash
# SPDX-License-Identifier: GPL-3.0-or-later
#
# What app/run, tests/run and tests/bench/run share. Sourced, with `root` set to
# the top of the source tree.

: "${root:?set it to the top of the source tree}"

say() { printf '%s\n' "$*" >&2; }

# Configures build folder $1 by .ci/settings/$2.cmake unless that is done already; further
# arguments are cache settings (-DNAME=VALUE) that must hold. Says nothing unless
# it fails.
configure() {
  local folder=$root/$1 settings=$root/.ci/settings/$2.cmake log setting satisfied=yes fresh=()
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
  if ! cmake -S "$root" -B "$folder" -G Ninja -C "$settings" "${fresh[@]}" "$@" >"$log" 2>&1; then
    cat "$log" >&2
    say "Configuring ${folder##*/}/ failed; the lines above are what CMake said."
    return 1
  fi
}

# Builds target $2 in build folder $1, one build at a time in a folder. Shows its
# steps the first time; later says only that it builds, if that takes a while.
build() {
  local folder=$root/$1 target=$2 notice
  (
    flock 9
    if [[ ! -f $folder/.built-$target ]]; then
      say "Building ${folder##*/}/, which takes a few minutes the first time."
      cmake --build "$folder" --target "$target" >&2
      touch "$folder/.built-$target"
    else
      { sleep 2 >/dev/null 2>&1 && say "Building what has changed ..."; } 9>&- &
      notice=$!
      trap 'kill "$notice" 2>/dev/null || true' EXIT
      cmake --build "$folder" --target "$target" -- --quiet 2>&1 |
        { grep -vxF 'ninja: no work to do.' >&2 || true; }
    fi
  ) 9>"$folder/.building"
}
