package dev.thinair.ducts.kernel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Who joins whom in a network, and in which order its nodes are eliminated. Shared by all changed
 * copies of a network.
 */
final class Topology {
    final String[] nodeName;
    final String[] branchName;
    final int[] from;
    final int[] to;

    /** Elimination row of a node, or the complement of its number among fixed nodes. */
    final int[] rowOfNode;

    final int[] rowFrom;
    final int[] rowTo;
    final int unknowns;

    /** Slot in which a branch's conductance gathers; -1 if it touches a fixed node. */
    final int[] slot;

    final int slots;
    final int[] columnStart;
    final int[] slotRow;

    /** Slots that elimination adds to, in the order in which it does. */
    final int[] fillTarget;

    private Topology(
            String[] nodeName,
            String[] branchName,
            int[] from,
            int[] to,
            int[] rowOfNode,
            int unknowns,
            int[] slot,
            int[] columnStart,
            int[] slotRow,
            int[] fillTarget) {
        this.nodeName = nodeName;
        this.branchName = branchName;
        this.from = from;
        this.to = to;
        this.rowOfNode = rowOfNode;
        this.unknowns = unknowns;
        this.slot = slot;
        this.slots = slotRow.length;
        this.columnStart = columnStart;
        this.slotRow = slotRow;
        this.fillTarget = fillTarget;
        this.rowFrom = new int[from.length];
        this.rowTo = new int[from.length];
        for (int i = 0; i < from.length; i++) {
            rowFrom[i] = rowOfNode[from[i]];
            rowTo[i] = rowOfNode[to[i]];
        }
    }

    static Topology of(
            List<String> nodeNames,
            List<Double> pressures,
            List<String> branchNames,
            List<int[]> ends) {
        int nodes = nodeNames.size();
        int[] from = ends.stream().mapToInt(e -> e[0]).toArray();
        int[] to = ends.stream().mapToInt(e -> e[1]).toArray();
        boolean[] known = new boolean[nodes];
        int[] rowOfNode = new int[nodes];
        int fixed = 0;
        for (int i = 0; i < nodes; i++) {
            known[i] = !Double.isNaN(pressures.get(i));
            if (known[i]) {
                rowOfNode[i] = ~fixed++;
            }
        }
        int unknowns = nodes - fixed;
        int[][] later = order(from, to, known, rowOfNode, unknowns);
        int[] columnStart = new int[unknowns + 1];
        for (int k = 0; k < unknowns; k++) {
            columnStart[k + 1] = columnStart[k] + later[k].length;
        }
        int[] slotRow = new int[columnStart[unknowns]];
        for (int k = 0; k < unknowns; k++) {
            int[] rows = Arrays.stream(later[k]).map(v -> rowOfNode[v]).sorted().toArray();
            System.arraycopy(rows, 0, slotRow, columnStart[k], rows.length);
        }
        int fills = 0;
        for (int k = 0; k < unknowns; k++) {
            int c = columnStart[k + 1] - columnStart[k];
            fills += c * (c - 1) / 2;
        }
        int[] fillTarget = new int[fills];
        int f = 0;
        for (int k = 0; k < unknowns; k++) {
            for (int s = columnStart[k]; s < columnStart[k + 1]; s++) {
                for (int u = s + 1; u < columnStart[k + 1]; u++) {
                    fillTarget[f++] = find(columnStart, slotRow, slotRow[s], slotRow[u]);
                }
            }
        }
        int[] slot = new int[from.length];
        for (int i = 0; i < from.length; i++) {
            int a = rowOfNode[from[i]];
            int b = rowOfNode[to[i]];
            slot[i] =
                    a >= 0 && b >= 0
                            ? find(columnStart, slotRow, Math.min(a, b), Math.max(a, b))
                            : -1;
        }
        return new Topology(
                nodeNames.toArray(new String[0]),
                branchNames.toArray(new String[0]),
                from,
                to,
                rowOfNode,
                unknowns,
                slot,
                columnStart,
                slotRow,
                fillTarget);
    }

    /**
     * Minimum-degree elimination order: fills in the rows and returns, for each row, the nodes
     * still joined to it when its turn comes. Nodes wait in stacks by degree, in which an outdated
     * entry is skipped when met, so that a tree takes linear time.
     */
    private static int[][] order(
            int[] from, int[] to, boolean[] known, int[] rowOfNode, int unknowns) {
        int nodes = known.length;
        int[][] near = new int[nodes][4];
        int[] degree = new int[nodes];
        for (int i = 0; i < from.length; i++) {
            if (!known[from[i]] && !known[to[i]]) {
                join(near, degree, from[i], to[i]);
                join(near, degree, to[i], from[i]);
            }
        }
        int[][] stack = new int[unknowns + 1][];
        int[] height = new int[unknowns + 1];
        for (int i = nodes - 1; i >= 0; i--) {
            if (!known[i]) {
                push(stack, height, degree[i], i);
            }
        }
        boolean[] gone = new boolean[nodes];
        int[][] later = new int[unknowns][];
        int d = 0;
        for (int k = 0; k < unknowns; k++) {
            int v = -1;
            while (v < 0) {
                while (height[d] == 0) {
                    d++;
                }
                int top = stack[d][--height[d]];
                if (!gone[top] && degree[top] == d) {
                    v = top;
                }
            }
            gone[v] = true;
            rowOfNode[v] = k;
            int[] around = Arrays.copyOf(near[v], degree[v]);
            later[k] = around;
            for (int a : around) {
                part(near, degree, a, v);
            }
            for (int a : around) {
                for (int b : around) {
                    if (a != b) {
                        join(near, degree, a, b);
                    }
                }
            }
            for (int a : around) {
                push(stack, height, degree[a], a);
                d = Math.min(d, degree[a]);
            }
        }
        return later;
    }

    private static void push(int[][] stack, int[] height, int degree, int node) {
        if (stack[degree] == null) {
            stack[degree] = new int[8];
        } else if (height[degree] == stack[degree].length) {
            stack[degree] = Arrays.copyOf(stack[degree], 2 * height[degree]);
        }
        stack[degree][height[degree]++] = node;
    }

    private static void join(int[][] near, int[] degree, int a, int b) {
        for (int i = 0; i < degree[a]; i++) {
            if (near[a][i] == b) {
                return;
            }
        }
        if (degree[a] == near[a].length) {
            near[a] = Arrays.copyOf(near[a], 2 * degree[a]);
        }
        near[a][degree[a]++] = b;
    }

    private static void part(int[][] near, int[] degree, int a, int b) {
        for (int i = 0; i < degree[a]; i++) {
            if (near[a][i] == b) {
                near[a][i] = near[a][--degree[a]];
                return;
            }
        }
    }

    private static int find(int[] columnStart, int[] slotRow, int column, int row) {
        int at = Arrays.binarySearch(slotRow, columnStart[column], columnStart[column + 1], row);
        if (at < 0) {
            throw new IllegalStateException("elimination has no place for " + column + ", " + row);
        }
        return at;
    }

    private static int head(int[] parent, int i) {
        int at = i;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** Refuses a network in which some node's pressure is not tied to a known one. */
    void requireReach(double[] count) {
        int nodes = nodeName.length;
        int[] parent = new int[nodes + 1];
        for (int i = 0; i < nodes; i++) {
            parent[i] = rowOfNode[i] < 0 ? nodes : i;
        }
        parent[nodes] = nodes;
        if (unknowns == nodes) {
            throw new IllegalArgumentException("the network has no node of known pressure");
        }
        for (int i = 0; i < from.length; i++) {
            if (count[i] > 0) {
                parent[head(parent, from[i])] = head(parent, to[i]);
            }
        }
        int ground = head(parent, nodes);
        List<String> lost = new ArrayList<>();
        for (int i = 0; i < nodes; i++) {
            if (head(parent, i) != ground) {
                lost.add(nodeName[i]);
            }
        }
        if (!lost.isEmpty()) {
            throw new IllegalArgumentException(
                    "no open way leads from " + lost + " to any place of known pressure");
        }
    }
}
