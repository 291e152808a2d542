#include "takeoff/walls/bond.h"
#include "base/number.h"
#include "takeoff/walls/bond_layout.h"

#include <stdlib.h>

#define FIRST_PIECE_STEP (NM_PER_INCH / 2)

enum {
	/* The rest is tried up to this many whole blocks from an end of a run. Farther in, the
	 * joints of both courses repeat block by block and nothing new comes. */
	PLACES_NEAR_AN_END = 2
};

/* A layout tried for one course, and how many of its joints are too close to the other course's
 * ends. */
struct way {
	struct bond_layout layout;
	int64_t close_ends;
};

struct ways {
	const struct bond_run *run, *other; /* other: NULL where it is the only course */
	const struct bond_rule *rule;
	struct way *list;
	size_t count, capacity;
};

/* The choice: fewest close joints, then fewest cuts over the courses really laid. */
struct choice {
	const struct bond_layout *odd, *even;
	int64_t close, cuts;
};

enum rest_place { REST_FIRST, REST_SECOND, REST_LAST };

static const struct {
	int first_quarters; /* first piece in quarters of a block; 0: none */
	enum rest_place rest;
	bool shared;
} candidates[] = {
	{ 0, REST_LAST, false },
	{ 0, REST_FIRST, false },
	{ 0, REST_SECOND, false },
	{ 0, REST_LAST, true },
	{ 2, REST_LAST, false },
	{ 1, REST_LAST, false },
	{ 3, REST_LAST, false },
};
enum { CANDIDATES = sizeof candidates / sizeof candidates[0] };

/* So many quarters of a block, rounded so that joints one or three quarters apart are never a
 * nanometre too close. */
static nm quarters(nm block, int count)
{
	nm one = (block + 3) / 4;

	return count == 0 ? 0 : count == 1 ? one : count == 2 ? block / 2 : block - one;
}

nm bond_shortest(nm block, nm shortest)
{
	return nm_least(nm_most(shortest, quarters(block, 1)), block / 2);
}

static void add_way(struct ways *ways, const struct bond_layout *layout)
{
	ways->list = memory_grow(ways->list, ways->count, &ways->capacity, sizeof *ways->list);
	ways->list[ways->count++] = (struct way){ *layout, !ways->other ? 0 :
		bond_layout_close_ends(layout, ways->other, ways->rule->block) };
}

static void add_candidates(struct ways *ways)
{
	const struct bond_rule *rule = ways->rule;

	for (int i = 0; i < CANDIDATES; i++) {
		nm first = quarters(rule->block, candidates[i].first_quarters);
		int64_t before = candidates[i].rest;
		struct bond_layout layout;

		if (first > 0 && first < rule->shortest)
			continue;
		if (!bond_layout_make(&layout, ways->run, rule, first, candidates[i].shared))
			continue;
		if (candidates[i].rest != REST_LAST) {
			if (layout.rest[0] == 0 || before >= layout.before)
				continue; /* the same as an earlier one */
			bond_layout_move(&layout, ways->run, rule->block, before);
		}
		add_way(ways, &layout);
	}
}

/* Adds a layout with its rest at every place near an end where it bonds with the other ends. */
static void add_places(struct ways *ways, struct bond_layout *layout)
{
	int64_t whole = layout->rest[0] > 0 ? layout->before : 0;
	nm block = ways->rule->block;

	for (int64_t before = 0; before <= whole; before++) {
		if (before == PLACES_NEAR_AN_END && whole - before > PLACES_NEAR_AN_END)
			before = whole - PLACES_NEAR_AN_END + 1;
		if (whole > 0)
			bond_layout_move(layout, ways->run, block, before);
		if (bond_layout_close_ends(layout, ways->other, block) == 0)
			add_way(ways, layout);
	}
}

static void add_first_pieces(struct ways *ways)
{
	const struct bond_rule *rule = ways->rule;
	nm first = 0;

	while (first < rule->block && first <= ways->run->length) {
		struct bond_layout layout;
		bool is_shared = false;

		if (bond_layout_make(&layout, ways->run, rule, first, false)) {
			is_shared = layout.rest[1] > 0;
			add_places(ways, &layout);
		}
		if (!is_shared && bond_layout_make(&layout, ways->run, rule, first, true))
			add_places(ways, &layout);
		first = first == 0 ? rule->shortest : first + FIRST_PIECE_STEP;
	}
}

static struct choice choose_single(const struct ways *odd)
{
	struct choice best = { &odd->list[0].layout, NULL, 0, odd->list[0].layout.cut };

	for (size_t i = 1; i < odd->count; i++) {
		const struct bond_layout *layout = &odd->list[i].layout;

		if (layout->cut < best.cuts)
			best = (struct choice){ layout, NULL, 0, layout->cut };
	}
	return best;
}

static struct choice choose_pair(const struct ways *odd, const struct ways *even)
{
	const struct bond_rule *rule = odd->rule;
	struct choice best = { &odd->list[0].layout, &even->list[0].layout, INT64_MAX, INT64_MAX };

	for (size_t i = 0; i < odd->count; i++) {
		for (size_t j = 0; j < even->count; j++) {
			const struct way *a = &odd->list[i], *b = &even->list[j];
			int64_t cuts = (int64_t)rule->odd_courses * a->layout.cut +
				(int64_t)rule->even_courses * b->layout.cut;
			int64_t close = a->close_ends + b->close_ends;

			if (close > best.close || (best.close == 0 && cuts >= best.cuts))
				continue;
			close += bond_layout_close_joints(&a->layout, &b->layout, rule->block);
			if (close < best.close || (close == best.close && cuts < best.cuts))
				best = (struct choice){ &a->layout, &b->layout, close, cuts };
		}
	}
	return best;
}

/* The first pair that bonds, in the order of the lists. */
static bool choose_first(struct choice *out, const struct ways *odd, const struct ways *even)
{
	for (size_t i = 0; i < odd->count; i++) {
		const struct way *a = &odd->list[i];

		for (size_t j = 0; a->close_ends == 0 && j < even->count; j++) {
			const struct way *b = &even->list[j];

			*out = (struct choice){ &a->layout, &b->layout, 0, 0 };
			if (b->close_ends == 0 && bond_layout_close_joints(out->odd, out->even,
				odd->rule->block) == 0)
				return true;
		}
	}
	return false;
}

/* Chooses among the fixed candidates, and looks further only where none bonds. The choice
 * points into the lists. */
static struct choice choose(struct ways *odd, struct ways *even)
{
	struct choice choice;

	add_candidates(odd);
	if (!odd->other)
		return choose_single(odd);
	add_candidates(even);
	choice = choose_pair(odd, even);
	if (choice.close > 0) {
		add_first_pieces(odd);
		add_first_pieces(even);
		if (!choose_first(&choice, odd, even))
			choice = choose_pair(odd, even);
	}
	return choice;
}

static void lay_course(struct bond_course *out, const struct bond_layout *layout, nm block,
	struct arena *arena)
{
	out->pieces = bond_layout_pieces(layout, block, arena, &out->count);
	out->cut = layout->cut;
}

bool bond_lay(struct bond *out, struct arena *arena, const struct bond_run *odd,
	const struct bond_run *even, const struct bond_rule *rule)
{
	struct ways odds = { .run = odd, .other = even, .rule = rule };
	struct ways evens = { .run = even, .other = odd, .rule = rule };
	struct choice choice;

	if (odd->length < rule->shortest || (even && even->length < rule->shortest))
		return false;
	choice = choose(&odds, &evens);
	*out = (struct bond){ .holds = choice.close == 0 };
	lay_course(&out->odd, choice.odd, rule->block, arena);
	if (choice.even)
		lay_course(&out->even, choice.even, rule->block, arena);
	free(odds.list);
	free(evens.list);
	return true;
}
