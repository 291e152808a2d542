#include "takeoff/walls/corners.h"
#include "base/memory.h"
#include "base/stop.h"

#include <stdlib.h>

/* The least cost from a corner back to corner 0, by the state there. */
struct way_home {
	int64_t cost[2];
};

static int64_t sum(int64_t a, int64_t b)
{
	return a == COST_EXCLUDED || b == COST_EXCLUDED ? COST_EXCLUDED : a + b;
}

/* The cost from a corner in `state` along its side to the next corner, in the state `next`, and
 * home. */
static int64_t cost_by(const struct way_home *home, const struct side_cost *costs, int corner,
	bool state, bool next)
{
	return sum(costs[corner].of[state][!next], home[corner + 1].cost[next]);
}

/* Fills home[0..sides] for loops that start and end in the given state of corner 0; returns the
 * least cost. */
static int64_t walk_back(struct way_home *home, const struct side_cost *costs, int sides,
	bool start)
{
	home[sides].cost[start] = 0;
	home[sides].cost[!start] = COST_EXCLUDED;
	for (int corner = sides - 1; corner >= 0 && !stop_asked(); corner--) {
		for (int state = 0; state < 2; state++) {
			int64_t through = cost_by(home, costs, corner, state, true);
			int64_t butt = cost_by(home, costs, corner, state, false);

			home[corner].cost[state] = through < butt ? through : butt;
		}
	}
	return home[0].cost[start];
}

static void walk_forth(bool *through, const struct way_home *home, const struct side_cost *costs,
	int sides, bool start)
{
	bool state = start;

	for (int corner = 0; corner < sides && !stop_asked(); corner++) {
		through[corner] = state;
		state = cost_by(home, costs, corner, state, true) == home[corner].cost[state];
	}
}

int64_t corners_choose(bool *through, const struct side_cost *costs, int sides)
{
	struct way_home *home = memory_new((size_t)sides + 1, sizeof *home);
	int64_t butt = walk_back(home, costs, sides, false);
	int64_t best = walk_back(home, costs, sides, true);
	bool start = best <= butt;

	if (!start)
		best = walk_back(home, costs, sides, false);
	if (best != COST_EXCLUDED)
		walk_forth(through, home, costs, sides, start);
	free(home);
	return best;
}
