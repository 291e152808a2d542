#include "takeoff/walls/bond_ways.h"

#define FIRST_PIECE_STEP (NM_PER_INCH / 2)

enum {
	/* The rest is tried up to this many whole blocks from an end of a run. Farther in, the
	 * joints of both courses repeat block by block and nothing new comes. */
	PLACES_NEAR_AN_END = 2
};

enum rest_place { REST_LAST, REST_FIRST, REST_SECOND, REST_NEXT_TO_LAST };

static const struct {
	int first_quarters; /* first piece in quarters of a block; 0: none */
	int lead;           /* 1: it stands behind a block */
	enum rest_place rest;
	bool shared;
} candidates[] = {
	{ 0, 0, REST_LAST, false },
	{ 0, 0, REST_FIRST, false },
	{ 0, 0, REST_SECOND, false },
	{ 0, 0, REST_NEXT_TO_LAST, false },
	{ 0, 0, REST_LAST, true },
	{ 0, 0, REST_NEXT_TO_LAST, true },
	{ 2, 0, REST_LAST, false },
	{ 1, 0, REST_LAST, false },
	{ 3, 0, REST_LAST, false },
	{ 2, 0, REST_NEXT_TO_LAST, false },
	{ 1, 0, REST_NEXT_TO_LAST, false },
	{ 3, 0, REST_NEXT_TO_LAST, false },
	{ 2, 1, REST_LAST, false },
	{ 1, 1, REST_LAST, false },
	{ 3, 1, REST_LAST, false },
	{ 2, 1, REST_NEXT_TO_LAST, false },
	{ 1, 1, REST_NEXT_TO_LAST, false },
	{ 3, 1, REST_NEXT_TO_LAST, false },
};
enum { CANDIDATES = sizeof candidates / sizeof candidates[0] };

static void add_way(struct ways *ways, const struct bond_layout *layout)
{
	const struct bond_rule *rule = ways->rule;
	struct way way = { .layout = *layout,
		.short_by = bond_layout_short(layout, ways->run, rule->block, rule->corner),
		.is_weak = bond_layout_short(layout, ways->run, rule->block, rule->enough) > 0,
		.cut_heads = bond_layout_cut_heads(layout, ways->run) };

	if (ways->other)
		way.close = bond_layout_close_ends(layout, ways->other, rule->block);
	if (ways->below)
		way.close = bond_layout_close_below(layout, ways->run, rule->block, ways->below);
	ways->list = memory_grow(ways->list, ways->count, &ways->capacity, sizeof *ways->list);
	ways->list[ways->count++] = way;
}

/* ---- Courses that are their own images ------------------------------------------------------- */

/* Two equal pieces, behind `outer` blocks from each end. */
static void add_two(struct ways *ways, nm piece, int64_t outer)
{
	struct bond_layout layout;

	bond_layout_mirrored(&layout, ways->run, ways->rule->block, outer, piece, false);
	add_way(ways, &layout);
}

static void add_mirrored(struct ways *ways)
{
	nm block = ways->rule->block, rest = ways->run->length % block;
	int64_t whole = ways->run->length / block;
	struct bond_layout layout;

	if (rest == 0 || (whole % 2 == 0 && rest >= ways->rule->shortest)) {
		bond_layout_mirrored(&layout, ways->run, block, rest == 0 ? whole : whole / 2,
			rest, true);
		add_way(ways, &layout);
	}
	if (whole == 0 || (rest + block) % 2 != 0)
		return;
	if (whole % 2 == 1)
		add_two(ways, (rest + block) / 2, whole / 2);
	if (whole > 1)
		add_two(ways, (rest + block) / 2, 0);
	if (whole > 3)
		add_two(ways, (rest + block) / 2, 1);
}

/* ---- All others ------------------------------------------------------------------------------ */

/* Whole blocks before the rest. */
static int64_t before_rest(enum rest_place place, int64_t movable)
{
	switch (place) {
	case REST_FIRST:
		return 0;
	case REST_SECOND:
		return 1;
	case REST_NEXT_TO_LAST:
		return movable - 1;
	case REST_LAST:
		break;
	}
	return movable;
}

static void add_candidate(struct ways *ways, int at)
{
	const struct bond_rule *rule = ways->rule;
	enum rest_place place = candidates[at].rest;
	nm first = bond_quarters(rule->block, candidates[at].first_quarters);
	struct bond_layout layout;
	int64_t movable, before;

	if (first > 0 && first < rule->shortest)
		return;
	if (!bond_layout_make(&layout, ways->run, rule,
		(struct bond_start){ first, candidates[at].lead }, candidates[at].shared))
		return;
	movable = bond_layout_movable(&layout);
	before = before_rest(place, movable);
	/* The same as an earlier one. */
	if (place != REST_LAST && (movable == 0 || before < 0 || before >= movable))
		return;
	bond_layout_move(&layout, ways->run, rule->block, before);
	add_way(ways, &layout);
}

void ways_add_candidates(struct ways *ways)
{
	if (ways->rule->mirrored) {
		add_mirrored(ways);
		return;
	}
	for (int i = 0; i < CANDIDATES; i++) {
		/* Inside is where a cut piece need not show its head. */
		if ((candidates[i].lead > 0 && ways->run->first_open) ||
			(candidates[i].rest == REST_NEXT_TO_LAST && ways->run->last_open))
			continue;
		add_candidate(ways, i);
	}
}

/* Adds a layout with its rest at every place near an end, where it has no fault. */
static void add_places(struct ways *ways, struct bond_layout *layout, bool may_be_weak)
{
	int64_t whole = bond_layout_movable(layout);

	for (int64_t before = 0; before <= whole; before++) {
		if (before == PLACES_NEAR_AN_END && whole - before > PLACES_NEAR_AN_END)
			before = whole - PLACES_NEAR_AN_END + 1;
		if (whole > 0)
			bond_layout_move(layout, ways->run, ways->rule->block, before);
		add_way(ways, layout);
		if (ways->list[ways->count - 1].close > 0 ||
			(ways->list[ways->count - 1].is_weak && !may_be_weak))
			ways->count--;
	}
}

static void add_start(struct ways *ways, struct bond_start start, bool may_be_weak)
{
	struct bond_layout layout;
	bool is_shared = false;

	if (bond_layout_make(&layout, ways->run, ways->rule, start, false)) {
		is_shared = layout.cut - layout.rest == 2;
		add_places(ways, &layout, may_be_weak);
	}
	if (!is_shared && bond_layout_make(&layout, ways->run, ways->rule, start, true))
		add_places(ways, &layout, may_be_weak);
}

void ways_add_search(struct ways *ways, bool may_be_weak)
{
	const struct bond_rule *rule = ways->rule;
	nm first = 0;

	if (rule->mirrored)
		return;
	while (first < rule->block && first <= ways->run->length) {
		add_start(ways, (struct bond_start){ first, 0 }, may_be_weak);
		if (first > 0 && !ways->run->first_open)
			add_start(ways, (struct bond_start){ first, 1 }, may_be_weak);
		first = first == 0 ? rule->shortest : first + FIRST_PIECE_STEP;
	}
}
