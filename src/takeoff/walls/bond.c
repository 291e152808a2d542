#include "takeoff/walls/bond.h"
#include "base/number.h"
#include "takeoff/walls/bond_ways.h"

#include <stdlib.h>

/* What is chosen by, the first first. */
struct merit {
	int faults; /* kinds of them: joints too close, weak corner pieces */
	int64_t close;
	nm short_by;
	int64_t cuts, cut_heads; /* over the courses really laid */
};

struct choice {
	bool is_made;
	struct way odd, even;
	struct merit merit;
};

nm bond_shortest(nm block, nm shortest)
{
	return nm_least(nm_most(shortest, bond_quarters(block, 1)), block / 2);
}

nm bond_corner(nm block, nm depth)
{
	return nm_least(nm_most(block / 2, depth), block);
}

nm bond_enough(nm block, nm depth)
{
	return 4 * depth > 3 * block ? block / 2 : bond_corner(block, depth);
}

static bool is_better(const struct merit *a, const struct merit *b)
{
	if (a->faults != b->faults)
		return a->faults < b->faults;
	if (a->close != b->close)
		return a->close < b->close;
	if (a->short_by != b->short_by)
		return a->short_by < b->short_by;
	if (a->cuts != b->cuts)
		return a->cuts < b->cuts;
	return a->cut_heads < b->cut_heads;
}

/* Adds joints too close. */
static void add_close(struct merit *merit, int64_t close)
{
	merit->faults += merit->close == 0 && close > 0;
	merit->close += close;
}

/* Of a course and, unless NULL, of the one it is laid with; without the joints inside both. */
static struct merit merit_of(const struct bond_rule *rule, const struct way *a, const struct way *b)
{
	static const struct way none;
	const struct way *other = b ? b : &none;
	int64_t odd = rule->odd_courses, even = rule->even_courses;
	struct merit merit = {
		.faults = a->is_weak || other->is_weak,
		.short_by = a->short_by + other->short_by,
		.cuts = odd * a->layout.cut + even * other->layout.cut,
		.cut_heads = odd * a->cut_heads + even * other->cut_heads,
	};

	add_close(&merit, a->close + other->close);
	return merit;
}

/* The merit can only get worse by the joints inside both: they are looked at last. */
static void try_pair(struct choice *best, const struct bond_rule *rule, const struct way *a,
	const struct way *b)
{
	struct merit merit = merit_of(rule, a, b);

	if (best->is_made && !is_better(&merit, &best->merit))
		return;
	if (b)
		add_close(&merit, bond_layout_close_joints(&a->layout, &b->layout, rule->block));
	if (!best->is_made || is_better(&merit, &best->merit))
		*best = (struct choice){ true, *a, b ? *b : *a, merit };
}

/* even: NULL where there is no such course. */
static struct choice choose_best(const struct ways *odd, const struct ways *even)
{
	struct choice best = { .is_made = false };

	for (size_t i = 0; i < odd->count; i++) {
		if (!even)
			try_pair(&best, odd->rule, &odd->list[i], NULL);
		for (size_t j = 0; even && j < even->count; j++)
			try_pair(&best, odd->rule, &odd->list[i], &even->list[j]);
	}
	return best;
}

static bool is_good(const struct way *way)
{
	return way->close == 0 && !way->is_weak;
}

/* Takes the first pair without a fault, in the order of the lists; false where there is none. */
static bool choose_first(struct choice *out, const struct ways *odd, const struct ways *even)
{
	for (size_t i = 0; i < odd->count; i++) {
		const struct way *a = &odd->list[i];

		for (size_t j = 0; is_good(a) && j < even->count; j++) {
			const struct way *b = &even->list[j];

			if (!is_good(b) || !bond_layout_bonds(&a->layout, &b->layout,
				odd->rule->block))
				continue;
			*out = (struct choice){ .is_made = true, .odd = *a, .even = *b,
				.merit = merit_of(odd->rule, a, b) };
			return true;
		}
	}
	return false;
}

static void add_search(struct ways *odd, struct ways *even, bool may_be_weak)
{
	ways_add_search(odd, may_be_weak);
	if (even)
		ways_add_search(even, may_be_weak);
}

/* Chooses among the fixed candidates, and looks further only where each has a fault. */
static struct choice choose(struct ways *odd, struct ways *even)
{
	struct choice choice;

	ways_add_candidates(odd);
	if (even)
		ways_add_candidates(even);
	choice = choose_best(odd, even);
	if (!choice.is_made || choice.merit.faults == 0)
		return choice;
	add_search(odd, even, false);
	if (even && (choose_first(&choice, odd, even) || choice.merit.close == 0))
		return choice;
	if (choice.merit.close > 0)
		add_search(odd, even, true);
	return choose_best(odd, even);
}

static void lay_course(struct bond_course *out, const struct way *way, nm block,
	struct arena *arena)
{
	out->pieces = bond_layout_pieces(&way->layout, block, arena, &out->count);
	out->cut = way->layout.cut;
}

/* even: NULL where there is no such course. */
static bool lay_ways(struct bond *out, struct arena *arena, struct ways *odd, struct ways *even)
{
	const struct bond_rule *rule = odd->rule;
	struct choice choice = { .is_made = false };

	if (odd->run->length >= rule->shortest && (!even || even->run->length >= rule->shortest))
		choice = choose(odd, even);
	if (choice.is_made) {
		*out = (struct bond){ .holds = choice.merit.close == 0,
			.corners_hold = choice.merit.short_by == 0 };
		lay_course(&out->odd, &choice.odd, rule->block, arena);
		if (even)
			lay_course(&out->even, &choice.even, rule->block, arena);
	}
	free(odd->list);
	if (even)
		free(even->list);
	return choice.is_made;
}

bool bond_lay(struct bond *out, struct arena *arena, const struct bond_run *odd,
	const struct bond_run *even, const struct bond_rule *rule)
{
	struct ways odds = { .run = odd, .other = even, .rule = rule };
	struct ways evens = { .run = even, .other = odd, .rule = rule };

	return lay_ways(out, arena, &odds, even ? &evens : NULL);
}

bool bond_lay_upon(struct bond *out, struct arena *arena, const struct bond_run *run,
	const struct bond_rule *rule, const struct bond_below *below)
{
	struct ways ways = { .run = run, .below = below, .rule = rule };

	return lay_ways(out, arena, &ways, NULL);
}

struct bond_below bond_below(struct arena *arena, const struct bond_run *run,
	const struct bond_course *course, nm apart)
{
	nm *joints = arena_new(arena, (size_t)course->count + 1, sizeof *joints), at = run->from;
	struct bond_below below = { .joints = joints, .first_is_end = run->first_open,
		.last_is_end = run->last_open, .apart = apart };

	for (int i = 0; i <= course->count; i++) {
		if ((i > 0 || run->first_open) && (i < course->count || run->last_open))
			joints[below.count++] = at;
		at += i < course->count ? course->pieces[i] : 0;
	}
	return below;
}
