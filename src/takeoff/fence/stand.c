#include "takeoff/fence/stand.h"
#include "base/number.h"
#include "takeoff/fence/fence_values.h"

#include <stdlib.h>

struct stand stand_of(const struct plot *plot, const struct block *fence)
{
	nm cell = block_length(&plot->details.head, HEAD_CELL);

	return (struct stand){ cell, plot->ground.columns * cell, plot->ground.rows * cell,
		fence_derived(plot, fence, FENCE_INSET) };
}

/* `at` moved into the range where posts may stand along one side of the plan. */
static nm move_in(nm at, nm side, nm inset)
{
	nm nearest = nm_least(inset, side / 2);

	return nm_least(nm_most(at, nearest), side - nearest);
}

struct spot stand_spot(const struct stand *stand, struct place point)
{
	return (struct spot){ move_in(point.x * stand->cell, stand->width, stand->inset),
		move_in(point.y * stand->cell, stand->height, stand->inset) };
}

int spot_compare(const struct spot *a, const struct spot *b)
{
	int order = compare(a->y, b->y);

	return order ? order : compare(a->x, b->x);
}

nm spot_distance(struct spot a, struct spot b)
{
	return llabs(b.x - a.x) + llabs(b.y - a.y);
}

nm stand_clear(const struct stand *stand, struct leg gate, nm post)
{
	return nm_most(0, spot_distance(stand_spot(stand, gate.from),
		stand_spot(stand, gate.to)) - post);
}
