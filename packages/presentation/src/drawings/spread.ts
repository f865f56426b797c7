interface Cluster {
  /** Sum over its members of where each would like the start of the cluster to be. */
  sum: number;
  count: number;
  length: number;
}

/**
 * Middles of labels in a row, each as near as can be to where it is `wanted` (ascending), so that no two come closer than
 * `gap`: neighbours that touch are joined and moved together to the mean of what they want.
 */
export function spread(wanted: readonly number[], sizes: readonly number[], gap: number): number[] {
  const clusters: Cluster[] = [];
  wanted.forEach((middle, index) => {
    const size = sizes[index] ?? 0;
    let cluster: Cluster = { sum: middle - size / 2, count: 1, length: size };
    let before = clusters[clusters.length - 1];
    while (before !== undefined && start(before) + before.length + gap > start(cluster)) {
      clusters.pop();
      const shift = before.length + gap;
      cluster = {
        sum: before.sum + cluster.sum - cluster.count * shift,
        count: before.count + cluster.count,
        length: shift + cluster.length,
      };
      before = clusters[clusters.length - 1];
    }
    clusters.push(cluster);
  });
  const middles: number[] = [];
  for (const cluster of clusters) {
    let at = start(cluster);
    for (let member = 0; member < cluster.count; member += 1) {
      const size = sizes[middles.length] ?? 0;
      middles.push(at + size / 2);
      at += size + gap;
    }
  }
  return middles;
}

function start({ sum, count }: Cluster): number {
  return sum / count;
}
