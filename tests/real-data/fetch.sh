#!/usr/bin/env bash
# Fetches the real data that a test imports, and converts it. Running it again does nothing.
#
# The data set fmd belongs to the R package sparr (GPL, version 2 or later), which Debian packages as r-cran-sparr. It is
# not kept here because of its licence: it is fetched, and what is made of it stays out of the repository.
# Needs apt-get, dpkg-deb and python3; installs nothing, and needs no R.
set -euo pipefail

here=$(cd "$(dirname "$0")" && pwd)
fetched=$here/fetched
data_sha256=bb85a00f7349dafcebfeb5b006ea8073f5dddbc81983ab0389760cf799bf5197

if [[ -f $fetched/records.csv && $fetched/records.csv -nt $here/convert.py && $fetched/records.csv -nt $here/rdata.py ]]; then
    exit 0
fi

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
fetch() { apt-get download -q -o APT::Sandbox::User=root r-cran-sparr; }
fetch || { apt-get update -q; fetch; }
dpkg-deb -x r-cran-sparr_*.deb package
data=package/usr/lib/R/site-library/sparr/data/fmd.rda
echo "$data_sha256  $data" | sha256sum --check --quiet ||
    echo "The data set is not the one (sparr 2.2-17) that the test was written for; its figures may differ." >&2
PYTHONDONTWRITEBYTECODE=1 python3 "$here/convert.py" "$data" "$fetched"
echo "Real data: $(($(wc -l < "$fetched/records.csv") - 1)) records in $fetched"
