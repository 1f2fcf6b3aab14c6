# The licences of the libraries that travel with the program, gathered from the packages that were restored.
# Sourced by .build/release; the repository's folder is the current one.

packages=${NUGET_PACKAGES:-$HOME/.nuget/packages}

# name and version of each library in the program's lock file but for those that only the build uses
shipped() {
  awk -F'"' '
    /^      "[^"]+": \{/ { name = $2 }
    /"resolved":/ && name !~ /Analyzer|ILLink/ { print name, $4 }' src/ToolWear/packages.lock.json
}

# what a package's own description says between <TAG ...> and </TAG>
says() { sed -n "s|.*<$2[^>]*>\([^<]*\)</$2>.*|\1|p" "$1" | head -n 1; }

gather_licences() {
  local name version folder nuspec licence copyright file sum seen=
  {
    echo "ToolWear itself: see LICENSE, MIT. It travels with the libraries below, each under its own licence."
    echo
    while read -r name version; do
      folder=$packages/${name,,}/$version
      nuspec=$folder/${name,,}.nuspec
      [ -f "$nuspec" ] || { echo "release: $name $version is not restored: dotnet restore ToolWear.sln" >&2; return 1; }
      licence=$(says "$nuspec" license)
      copyright=$(says "$nuspec" copyright)
      [ -n "$copyright" ] || copyright="Copyright $(says "$nuspec" authors)"
      echo "$name $version"
      echo "  $licence. ${copyright} $(says "$nuspec" projectUrl)"
      # many packages bring the same file: it is written once
      while read -r file; do
        sum=$(cksum <"$file")
        case $seen in
          *"[$sum]"*) echo "  and the same $(basename "$file") as above" ;;
          *) sed 's/^/  /' "$file"; seen="$seen[$sum]" ;;
        esac
      done < <(find "$folder" -maxdepth 1 -type f \( -iname 'licen[cs]e*' -o -iname '*notices*' \) | sort)
      echo
    done < <(shipped)
    printf '\nMIT\n\n'
    sed -n '/^Permission is hereby granted/,$p' LICENSE
    for file in .build/licences/*.txt; do
      echo
      cat "$file"
    done
    # the two programs that need no .NET carry its runtime
    folder=$(dirname "$(readlink -f "$(command -v dotnet)")")
    for file in LICENSE.txt ThirdPartyNotices.txt; do
      if [ -f "$folder/$file" ]; then
        printf '\n.NET runtime: %s\n\n' "$file"
        cat "$folder/$file"
      fi
    done
  } >"$1"
}
