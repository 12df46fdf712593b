#!/usr/bin/env bash
# Shows that a group's records survive the loss of a database server: starts two PostgreSQL servers under Patroni with etcd and the
# program on both, has eight phones tick, kills the primary, and counts what was acknowledged and is lost, and how long nothing was.
# As root on Debian, in the folder of the source; takes about three minutes, all in a temporary folder.
#
#   bash app/deploy/standby/take-over.sh
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../../.."
here=app/deploy/standby

if ! command -v patroni >/dev/null || ! command -v etcd >/dev/null; then
  apt-get update -qq
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends postgresql patroni etcd-server >/dev/null
fi
binaries=$(dirname "$(ls /usr/lib/postgresql/*/bin/initdb | sort -V | tail -n 1)")

folder=$(mktemp -d)
chown postgres "$folder"
as_postgres() { (cd "$folder" && exec runuser -u postgres -- "$@" </dev/null); }

stop() {
  pkill -9 -u postgres -f "$folder" 2>/dev/null || true
  [ -z "${etcd:-}" ] || kill "$etcd" 2>/dev/null || true
  rm -rf "$folder"
}
trap stop EXIT

# six in a row that are likely to be free
base=$((20000 + RANDOM % 20000))
etcd_port=$base
first=$((base + 2))
second=$((base + 3))

ETCD_ENABLE_V2=true etcd --name only --data-dir "$folder/etcd" --log-level error \
  --listen-client-urls "http://127.0.0.1:$etcd_port" --advertise-client-urls "http://127.0.0.1:$etcd_port" \
  --listen-peer-urls "http://127.0.0.1:$((base + 1))" --initial-advertise-peer-urls "http://127.0.0.1:$((base + 1))" \
  --initial-cluster "only=http://127.0.0.1:$((base + 1))" >"$folder/etcd.log" 2>&1 &
etcd=$!

# start_node NAME DATABASE_PORT REST_PORT
start_node() {
  sed -e "s|NODE|$1|g" -e "s|DATABASE_PORT|$2|g" -e "s|REST_PORT|$3|g" -e "s|ETCD_PORT|$etcd_port|g" \
    -e "s|BINARIES|$binaries|g" -e "s|FOLDER|$folder|g" "$here/patroni.yaml" >"$folder/$1.yaml"
  as_postgres patroni "$folder/$1.yaml" >>"$folder/$1.log" 2>&1 &
}

# wait_for WHAT COMMAND: up to two minutes
wait_for() {
  local what=$1
  shift
  for _ in {1..240}; do
    if "$@" >/dev/null 2>&1; then return; fi
    sleep 0.5
  done
  echo "$what did not come about" >&2
  tail -n 20 "$folder"/*.log >&2
  exit 1
}

answers() { curl -fsS -o /dev/null "http://127.0.0.1:$1/$2"; }
ask() { "$binaries/psql" -h 127.0.0.1 -p "$1" -U postgres -d "$2" -Atqc "$3"; }

start_node first "$first" $((base + 4))
wait_for "a primary" answers $((base + 4)) primary
start_node second "$second" $((base + 5))
wait_for "a synchronous standby" answers $((base + 5)) synchronous
ask "$first" postgres "create role warmshelf login"
ask "$first" postgres "create database warmshelf owner warmshelf"
echo "Two servers: $(ask "$first" postgres "select application_name || ' ' || sync_state from pg_stat_replication")"

cat >"$folder/kill-primary" <<KILL
#!/usr/bin/env bash
pkill -9 -u postgres -f "patroni $folder/first.yaml"
pkill -9 -u postgres -f "$folder/first"
KILL
chmod 755 "$folder/kill-primary"

address="jdbc:postgresql://127.0.0.1:$first,127.0.0.1:$second/warmshelf?user=warmshelf&targetServerType=primary"
address+="&connectTimeout=2&socketTimeout=10&hostRecheckSeconds=2"
held=0
mvn -q -B test-compile exec:exec@standby-bench -Dstandby.address="$address" -Dstandby.kill="$folder/kill-primary" || held=$?

start_node first "$first" $((base + 4))
wait_for "the killed server's return as a standby" answers $((base + 4)) replica
echo "The server that was killed is back, as a standby of the other."
exit "$held"
