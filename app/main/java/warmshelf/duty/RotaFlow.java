package warmshelf.duty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Gives out as many turns as possible and, among the ways to do that, as evenly as possible, without a look at days in a row:
 * a flow of least cost, sent along one cheapest path after another. A person's next duty costs the growth of the square of
 * their count, 2 n + 1; these costs grow with each duty, so that the cheapest flow has the least sum of squares.
 *
 * <p>Source: successive shortest paths for minimum-cost flow with convex costs, as textbooks on network flows give it.
 */
final class RotaFlow {
    private static final long FAR = Long.MAX_VALUE / 4;

    private final RotaTask task;
    private final List<Edge> edges = new ArrayList<>();
    private int nodes;

    private RotaFlow(RotaTask task) {
        this.task = task;
    }

    /** One way along an edge; {@code back} is the same edge the other way. */
    private static final class Edge {
        private final int start;
        private final int end;
        private final long cost;
        private int room;
        private Edge back;

        private Edge(int start, int end, int room, long cost) {
            this.start = start;
            this.end = end;
            this.room = room;
            this.cost = cost;
            this.back = this;
        }
    }

    static int[] plan(RotaTask task) {
        return new RotaFlow(task).solve();
    }

    private int[] solve() {
        int turns = task.turns().size();
        int source = node();
        int sink = node();
        int[] turnNodes = new int[turns];
        for (int turn = 0; turn < turns; turn++) {
            turnNodes[turn] = node();
            edge(turnNodes[turn], sink, 1, 0);
        }
        Edge[][] gives = new Edge[turns][task.people().size()];
        for (int person = 0; person < task.people().size(); person++) {
            addPerson(person, source, turnNodes, gives);
        }
        while (sendOne(source, sink)) {
            // each cheapest path fills one turn more
        }
        int[] plan = new int[turns];
        for (int turn = 0; turn < turns; turn++) {
            plan[turn] = giver(gives[turn]);
        }
        return plan;
    }

    private static int giver(Edge[] gives) {
        for (int person = 0; person < gives.length; person++) {
            if (gives[person] != null && gives[person].room == 0) {
                return person;
            }
        }
        return RotaTask.NOBODY;
    }

    /** A person's duties go through their days, each of which lets one through, or all where sites are looked at together. */
    private void addPerson(int person, int source, int[] turnNodes, Edge[][] gives) {
        int personNode = node();
        int[] dayNodes =
                new int[task.turns().isEmpty() ? 0 : task.day(task.turns().size() - 1) + 1];
        Arrays.fill(dayNodes, -1);
        int most = 0;
        for (int turn = 0; turn < turnNodes.length; turn++) {
            if (Arrays.stream(task.able(turn)).noneMatch(each -> each == person)) {
                continue;
            }
            int day = task.day(turn);
            if (dayNodes[day] < 0) {
                dayNodes[day] = node();
                edge(personNode, dayNodes[day], allTogether(day) ? turnNodes.length : 1, 0);
            }
            gives[turn][person] = edge(dayNodes[day], turnNodes[turn], 1, 0);
            most++;
        }
        for (int next = 0; next < most; next++) {
            edge(source, personNode, 1, 2L * (task.served(person) + next) + 1);
        }
    }

    private boolean allTogether(int day) {
        for (int turn = 0; turn < task.turns().size(); turn++) {
            if (task.day(turn) == day && !task.isTogether(turn)) {
                return false;
            }
        }
        return true;
    }

    private boolean sendOne(int source, int sink) {
        long[] cost = new long[nodes];
        Edge[] by = new Edge[nodes];
        Arrays.fill(cost, FAR);
        cost[source] = 0;
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Edge edge : edges) {
                if (edge.room > 0 && cost[edge.start] < FAR && cost[edge.start] + edge.cost < cost[edge.end]) {
                    cost[edge.end] = cost[edge.start] + edge.cost;
                    by[edge.end] = edge;
                    changed = true;
                }
            }
        }
        if (cost[sink] >= FAR) {
            return false;
        }
        for (int node = sink; node != source; node = by[node].start) {
            by[node].room--;
            by[node].back.room++;
        }
        return true;
    }

    private int node() {
        return nodes++;
    }

    private Edge edge(int start, int end, int room, long cost) {
        Edge there = new Edge(start, end, room, cost);
        Edge back = new Edge(end, start, 0, -cost);
        there.back = back;
        back.back = there;
        edges.add(there);
        edges.add(back);
        return there;
    }
}
