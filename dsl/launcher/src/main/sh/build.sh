# Part of `gripwright`, read by run.sh when something is missing or out of date: builds the command
# line, links its jars and stores its classes, while other runs wait.
# shellcheck shell=sh disable=SC2154 # set by gripwright and run.sh

# Ends with a sentence where Java is too old to run what is built here.
require_java() {
  version=$("$java" -XshowSettings:properties -version 2>&1 |
    sed -n 's/^ *java\.specification\.version = //p')
  case $version in
    1.* | '') major=8 ;;
    *) major=${version%%.*} ;;
  esac
  [ "$major" -ge 17 ] || fail "needs Java 17 or newer, and '$java' is Java ${version:-unknown}. Set JAVA_HOME to a newer JDK."
}

build() {
  require_java
  command -v "$javac" >/dev/null 2>&1 ||
    fail "needs a JDK to build, and '$java' is a Java without a compiler. Set JAVA_HOME to a JDK 17 or newer."

  # The stamp carries the time the build started: a source saved meanwhile is newer than it.
  : >"$stamp.$$"
  rm -rf "$app" "$target/run" "$target/link"
  printf 'gripwright: building once, this takes about a minute\n' >&2
  if (cd "$root" && ./mvnw -q -B -ntp -Dmaven.test.skip=true -Dspotless.check.skip=true \
    -pl dsl/tools,dsl/launcher -am package) </dev/null >&2; then
    mv "$stamp.$$" "$stamp"
  else
    rm -f "$stamp.$$" "$stamp"
    return 1
  fi
}

# Prints what an archive of loaded classes is valid for: its size, this folder, this Java and these
# jars. The size matters, because the JVM aborts on a truncated archive.
made_for() {
  made_by=$(real "$java")
  bytes=$(wc -c <"$1")
  printf '%s\n%s\n%s\n%s\n' "$((bytes))" "$root" "$made_by" "$jars"
  cat "${made_by%/bin/java}/release" 2>/dev/null || :
}

# True when there are no linked jars, or those of another build.
unlinked() {
  for jar in "$app"/*.jar "$target/run"/*.jar; do
    [ "$linked" -nt "$jar" ] || return 0
  done
  return 1
}

# Copies the jars with their lambdas linked beforehand.
link() {
  rm -rf "$linked" "$linked.new"
  jars=$target/link
  class_path
  if "$java" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp "$classpath" \
    gripwright.launcher.prelink.Prelinker "$app" "$linked.new" >"$linked.said" 2>&1; then
    mv "$linked.new" "$linked"
  else
    rm -rf "$linked.new"
    printf 'gripwright: the jars could not be linked, so every run starts more slowly; see %s\n' \
      "$linked.said" >&2
  fi
}

# Keeps the classes of some commands as the JVM has them in memory, so that later runs need
# not load, check and link them again. Without it everything works, only slower.
store_classes() {
  whole=
  printf 'gripwright: storing classes once for a quick start, this takes some seconds\n' >&2
  rm -f "$archive" "$archive".*
  if unlinked; then
    link
  fi
  jars=$linked
  [ -d "$linked" ] || jars=$app
  class_path
  sh "$scripts/store.sh" "$java" "$classpath" "$archive.new" \
    "$root/examples/plans/season.grip" >"$archive.said" 2>&1 || {
    printf 'gripwright: this Java cannot store classes, so every run starts more slowly; see %s\n' \
      "$archive.said" >&2
    : >"$archive.new" # nothing to use, and no second try with the same build and Java
  }
  made_for "$archive.new" >"$archive.for"
  mv -f "$archive.new" "$archive"
}

# Prints what tells a process from a later one of the same number: when it began. Prints nothing where
# the system says nothing of it.
began() {
  if [ -r "/proc/$1/stat" ]; then
    said=$(cat "/proc/$1/stat" 2>/dev/null) || return 0
    set -f
    # shellcheck disable=SC2086 # words are meant; the name before the bracket may have blanks
    set -- ${said##*) }
    set +f
    [ $# -lt 20 ] || { shift 19 && printf '%s\n' "$1"; }
  else
    ps -p "$1" -o lstart= 2>/dev/null || :
  fi
}

# True when whoever made the lock is gone: no such process, or a later one of the same number. A lock
# without a process number is new, or its maker died at once; after ten seconds it counts as abandoned.
abandoned() {
  owner=
  owner_began=
  { IFS= read -r owner && IFS= read -r owner_began; } 2>/dev/null <"$lock/pid" || :
  if [ -z "$owner" ]; then
    [ "$waited" -ge 10 ]
    return
  fi
  [ "$owner" != $$ ] || return 0
  # A process of somebody else can be there and take no signal.
  kill -0 "$owner" 2>/dev/null || [ -d "/proc/$owner" ] || ps -p "$owner" >/dev/null 2>&1 || return 0
  [ -n "$owner_began" ] && [ "$(began "$owner")" != "$owner_began" ]
}

# Takes an abandoned lock away: under a name of our own first, so that it is not one that another run
# has just made.
break_lock() {
  was=$owner
  mv "$lock" "$lock.$$" 2>/dev/null || return 0
  owner=
  { IFS= read -r owner; } 2>/dev/null <"$lock.$$/pid" || :
  if [ "$owner" = "$was" ] || ! mv "$lock.$$" "$lock" 2>/dev/null; then
    rm -rf "$lock.$$"
  fi
}

# One build at a time: whoever comes second waits for the first and uses what it built.
mkdir -p "$target" 2>/dev/null && [ -w "$target" ] ||
  fail "has to build first and cannot write to '$target'."
lock=$target/lock
waiting=
waited=0
until mkdir "$lock" 2>/dev/null; do
  if [ ! -d "$lock" ]; then
    # Gone in between, or the folder takes no more: a full disk, say.
    [ "$waited" -lt 20 ] || fail "cannot create '$lock'."
    waited=$((waited + 1))
    sleep 1
  elif abandoned; then
    break_lock
    waited=0
  else
    [ -n "$waiting" ] || printf 'gripwright: waiting for a build that another run has started\n' >&2
    waiting=yes
    waited=$((waited + 1))
    sleep 1
  fi
done
trap 'rm -rf "$lock" "$stamp.$$"' EXIT
trap 'exit 2' HUP INT TERM
{ echo $$ && began $$; } >"$lock/pid.new"
mv "$lock/pid.new" "$lock/pid"
if stale; then
  build || fail "the build failed; the lines above say why."
fi
if unarchived; then
  require_java
  store_classes
fi
rm -rf "$lock"
trap - EXIT HUP INT TERM
