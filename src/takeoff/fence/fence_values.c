#include "takeoff/fence/fence_values.h"
#include "base/number.h"

static const nm IN_GROUND_LEAST = 24 * NM_PER_INCH;
/* 4 ft: common practice, no published source. */
static const nm HEIGHT_OF_TWO_RAILS = 48 * NM_PER_INCH;
enum { POSTS_IN_HOLE = 3 };

int64_t fence_rails(const struct block *fence)
{
	const struct value *own = block_value(fence, FENCE_RAILS);

	if (own->set)
		return own->as.number;
	return block_length(fence, FENCE_HEIGHT) > HEIGHT_OF_TWO_RAILS ? 3 : 2;
}

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
	case FENCE_GATE_POST:
		return block_length(fence, FENCE_POST);
	case FENCE_INSET:
		return fence_derived(allow, fence, FENCE_HOLE) / 2;
	default:
		return block_length(fence, a);
	}
}
