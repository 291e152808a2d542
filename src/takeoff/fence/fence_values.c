#include "takeoff/fence/fence_values.h"
#include "base/number.h"

static const nm IN_GROUND_LEAST = 24 * NM_PER_INCH;
enum { POSTS_IN_HOLE = 3 };

nm fence_derived(const struct block *allow, const struct block *fence, enum attribute a)
{
	if (block_value(fence, a)->set)
		return block_length(fence, a);
	switch (a) {
	case FENCE_DEPTH:
		return nm_most(nm_most(block_length(fence, FENCE_HEIGHT) / 2, IN_GROUND_LEAST),
			block_length(allow, ALLOW_FROST));
	case FENCE_HOLE:
		return POSTS_IN_HOLE * block_length(fence, FENCE_POST);
	case FENCE_INSET:
		return fence_derived(allow, fence, FENCE_HOLE) / 2;
	default:
		return block_length(fence, a);
	}
}
