#include "takeoff/common/snags.h"
#include "base/show.h"
#include "plot/mirror.h"

#include <stdlib.h>

static const struct snag_rule rules[] = {
	[SNAG_WALL_JOG] = { "wall-jog",
		"Geometry: a side holds the depth of the wall round the corner and one piece." },
	[SNAG_WALL_NARROW] = { "wall-narrow",
		"Geometry: two walls and ground between them take more than two blocks' depth." },
	[SNAG_WALL_BOND] = { "wall-bond",
		"Running bond, joints a quarter of a unit apart or more: TMS 402, IRC." },
	[SNAG_WALL_HIGH] = { "wall-high",
		"Over 24 in: common practice, no published source. Over 4 ft from the footing's "
		"bottom: permit by IRC R105.2, design by an engineer; local rules are often "
		"stricter." },
	[SNAG_WALL_EMBED] = { "wall-embed",
		"A tenth of the height below ground: a block makers' association's note on small "
		"walls." },
	[SNAG_BED_THIN] = { "bed-thin", "Common practice, no published source." },
	[SNAG_CAP_NARROW] = { "cap-narrow",
		"Geometry: two caps and ground between them take more than two caps' depth." },
	[SNAG_FILL_NONE] = { "fill-none", "Arithmetic: no depth, or no part of the mix, is left." },
	[SNAG_FENCE_TIGHT] = { "fence-tight",
		"Geometry: between two posts there is their distance less a post." },
	[SNAG_FENCE_HOLE] = { "fence-hole",
		"Geometry: a square post goes into a round hole as wide as its diagonal." },
	[SNAG_MIRROR_BROKEN] = { "mirror-broken", "The plot's own mirror." },
};

const struct snag_rule *snag_rule(enum snag_code code)
{
	return &rules[code];
}

struct snag *snag_add(struct snag_list *list, enum snag_code code, const struct takeoff *takeoff,
	int region, const char *text)
{
	struct snag *snag;

	list->snags = arena_grow(list->arena, list->snags, list->count, &list->capacity,
		sizeof *list->snags);
	snag = &list->snags[list->count++];
	*snag = (struct snag){ .code = code, .region = region, .loop = -1, .side = -1, .text = text };
	if (region != NO_REGION)
		snag->cell = takeoff->survey.regions[region].first_cell;
	return snag;
}

const char *snag_length(struct arena *arena, const struct plot *plot, nm length)
{
	struct text text = TEXT_EMPTY;
	const char *shown;

	show_length(&text, length, plot_units(plot));
	shown = arena_print(arena, "%s", text.bytes);
	text_fini(&text);
	return shown;
}

void snag_mirror(struct snag_list *list, const struct plot *plot)
{
	static const char sentence[] = "This cell and its images in the mirror are not all alike.";
	struct mirror mirror = mirror_of(plot);
	struct place at = { 0, 0 };

	while (mirror_next_fault(&mirror, &plot->ground, at, &at)) {
		snag_add(list, SNAG_MIRROR_BROKEN, NULL, NO_REGION, sentence)->cell = at;
		at.x++;
	}
}

static int compare(int64_t a, int64_t b)
{
	return (a > b) - (a < b);
}

static int compare_snags(const void *a, const void *b)
{
	const struct snag *one = a, *other = b;
	int order = compare(one->code, other->code);

	if (order == 0)
		order = compare(one->cell.y, other->cell.y);
	if (order == 0)
		order = compare(one->cell.x, other->cell.x);
	if (order == 0)
		order = compare(one->loop, other->loop);
	return order ? order : compare(one->side, other->side);
}

void snag_finish(struct snag_list *list, struct takeoff *takeoff)
{
	if (list->count > 1)
		qsort(list->snags, list->count, sizeof *list->snags, compare_snags);
	takeoff->snags = list->snags;
	takeoff->snag_count = (int)list->count;
}
