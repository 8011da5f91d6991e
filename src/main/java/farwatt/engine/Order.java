package farwatt.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Puts vertices in the order in which they can be worked out; those that need each other become one tangle. */
final class Order {
    private Order() {}

    static List<Vertex> of(List<Vertex> vertices, Layout layout, Faults faults) {
        Map<Vertex, Integer> numbers = new HashMap<>();
        for (Vertex vertex : vertices) {
            numbers.put(vertex, numbers.size());
        }
        List<Vertex> order = new ArrayList<>();
        new Strong(vertices.size()) {
            @Override
            int[] reads(int node) {
                Set<Integer> reads = new LinkedHashSet<>();
                for (Dep dep : vertices.get(node).deps()) {
                    Integer maker = dep.col().maker == null ? null : numbers.get(dep.col().maker);
                    if (maker != null) {
                        reads.add(maker);
                    }
                }
                return reads.stream().mapToInt(Integer::intValue).toArray();
            }

            @Override
            void found(int[] set, boolean loops) {
                if (!loops) {
                    order.add(vertices.get(set[0]));
                    return;
                }
                List<Vertex> members = new ArrayList<>();
                for (int member : set) {
                    members.add(vertices.get(member));
                }
                order.add(new Tangle(members, layout, faults));
            }
        }.run();
        return order;
    }
}
