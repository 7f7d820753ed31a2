#!/usr/bin/env bash
# Runs every test there is and ends with the totals: "N passed, N failed, N skipped", alone on the last line.
# Needs the .NET 10 SDK and Node.js 20 or later. Other programs that tests use are installed from Debian's packages where
# they are missing. Writes to this folder and to the package caches only. Exits with 1 when anything failed or did not run.
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")" || exit 1

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_CLI_UI_LANGUAGE=en MSBUILDDISABLENODEREUSE=1
export npm_config_update_notifier=false npm_config_fund=false npm_config_audit=false

readonly results=artifacts/test-results
readonly minutes_a_project=10

# What tests use beside .NET and Node: a program, and the Debian package that brings it.
readonly programs=(
  'chromium chromium'
  'python3 python3'
  'cct proj-bin'
  'GeoConvert geographiclib-tools'
  'ogrinfo gdal-bin'
  'pdftotext poppler-utils'
)

say() { printf '\n== %s\n' "$*"; }

stop() {
  printf '%s\n' "$*" >&2
  exit 1
}

as_root() {
  if [[ $EUID -eq 0 ]]; then "$@"; else sudo --non-interactive "$@"; fi
}

install_programs() {
  local missing=() entry program package
  for entry in "${programs[@]}"; do
    read -r program package <<<"$entry"
    command -v "$program" >/dev/null || missing+=("$package")
  done
  # A Perl module has no program of its own to look for.
  perl -MGeo::Coordinates::OSGB -e1 2>/dev/null || missing+=(libgeo-coordinates-osgb-perl)
  [[ ${#missing[@]} -eq 0 ]] && return
  say "Installing ${missing[*]}"
  if ! command -v apt-get >/dev/null || ! { as_root apt-get update -qq &&
    DEBIAN_FRONTEND=noninteractive as_root apt-get install -qq -y --no-install-recommends "${missing[@]}" >/dev/null; }; then
    echo "Could not install: ${missing[*]}. Tests that need them are skipped, or fail where CI=true. Install them by hand to run all."
  fi
}

# Runs one suite under a name; its exit code stands beside its results, so that a crash is never taken for a pass.
run_suite() {
  local name=$1
  shift
  say "$name"
  timeout --kill-after=10 "${minutes_a_project}m" "$@" </dev/null
  echo $? >"$results/$name.exit"
}

for tool in dotnet node npm; do
  command -v "$tool" >/dev/null || stop "'$tool' is not on the path. Install the .NET 10 SDK and Node.js 20 or later."
done
rm -rf "$results"
mkdir -p "$results"
install_programs

say 'Fetching real data'
tests/real-data/fetch.sh || echo 'The real data could not be fetched; the tests that need them are skipped.'

# Debug builds write and read in small pieces, so that every test crosses the seams.
say 'Building; a warning is an error'
dotnet build RangeMap.sln --configuration Debug --nologo --verbosity quiet </dev/null || stop 'The build failed; no test was run.'
(cd web && npm run --silent check) </dev/null || stop 'The type check of the viewer failed; no test was run.'

run_suite web npm --prefix web test -- --reporter=default --reporter=json --outputFile.json="$PWD/$results/web.json"
suites=(web)
for project in tests/*.Tests; do
  name=$(basename "$project")
  suites+=("$name")
  run_suite "$name" dotnet test "$project" --configuration Debug --no-build --nologo --verbosity quiet \
    --results-directory "$results" --logger "trx;LogFileName=$name.trx" --logger 'console;verbosity=minimal'
done

say 'Totals'
node tests/totals.mjs "$results" "${suites[@]}"
