#include "takeoff/watering/cost_ring.h"

#include <stdlib.h>

void cost_ring_add(struct cost_ring *ring, int cost, int point)
{
	int at = cost % RING_SIZE;

	ring->of[at].points = memory_grow(ring->of[at].points, ring->of[at].count,
		&ring->of[at].capacity, sizeof *ring->of[at].points);
	ring->of[at].points[ring->of[at].count++] = point;
	ring->count++;
}

bool cost_ring_take(struct cost_ring *ring, int cost, int *point)
{
	int at = cost % RING_SIZE;

	if (ring->of[at].count == 0)
		return false;
	*point = ring->of[at].points[--ring->of[at].count];
	ring->count--;
	return true;
}

void cost_ring_clear(struct cost_ring *ring)
{
	for (int i = 0; i < RING_SIZE; i++)
		ring->of[i].count = 0;
	ring->count = 0;
}

void cost_ring_fini(struct cost_ring *ring)
{
	for (int i = 0; i < RING_SIZE; i++)
		free(ring->of[i].points);
	*ring = (struct cost_ring){ .count = 0 };
}
