#include "takeoff/advice/joining.h"
#include "base/number.h"
#include "base/stop.h"

struct joinings {
	const struct takeoff *takeoff;
	struct joining *list;
	int count;
};

static bool are_built_alike(const struct block *a, const struct block *b)
{
	for (enum attribute i = block_first(BLOCK_BED); i <= block_last(BLOCK_BED); i++)
		if (!value_equal(attribute_row(i)->rule.kind, block_value(a, i), block_value(b, i)))
			return false;
	return true;
}

static struct rectangle box_of(const struct region *a, const struct region *b)
{
	return (struct rectangle){ least(a->left, b->left),
		least(a->first_cell.y, b->first_cell.y), most(a->most.x, b->most.x),
		most(a->most.y, b->most.y) };
}

static bool could_be_one(const struct takeoff *takeoff, int one, int other)
{
	const struct region *regions = takeoff->survey.regions;

	return one != other && one != NO_REGION && region_is_raised(&regions[one]) &&
		region_is_raised(&regions[other]) && walls_find(&takeoff->walls, one) &&
		walls_find(&takeoff->walls, other) &&
		are_built_alike(&regions[one].entry->block, &regions[other].entry->block);
}

static void pair_add(struct joinings *joinings, int a, int b)
{
	const struct region *regions = joinings->takeoff->survey.regions;
	int one = least(a, b), other = most(a, b);

	for (int i = 0; i < joinings->count; i++)
		if (joinings->list[i].region == one && joinings->list[i].other == other)
			return;
	if (joinings->count < JOININGS_MOST && could_be_one(joinings->takeoff, one, other))
		joinings->list[joinings->count++] = (struct joining){ one, other,
			box_of(&regions[one], &regions[other]) };
}

/* Neighbours within row y, and across its lower edge. */
static void row_pairs(struct joinings *joinings, int y)
{
	const struct survey *survey = &joinings->takeoff->survey;
	size_t first = survey->row_runs[y], end = survey->row_runs[y + 1];
	size_t below = end, below_end = y + 1 < survey->rows ? survey->row_runs[y + 2] : end;

	for (size_t i = first + 1; i < end; i++)
		pair_add(joinings, survey->runs[i - 1].region, survey->runs[i].region);
	for (size_t i = first; i < end && below < below_end;) {
		const struct run *a = &survey->runs[i], *b = &survey->runs[below];
		int right = least(a->right, b->right);

		pair_add(joinings, a->region, b->region);
		i += a->right == right;
		below += b->right == right;
	}
}

int joinings_find(struct joining list[JOININGS_MOST], const struct takeoff *takeoff)
{
	struct joinings joinings = { takeoff, list, 0 };

	for (int y = 0; y < takeoff->survey.rows && !stop_asked(); y++)
		row_pairs(&joinings, y);
	return joinings.count;
}
