/* Advice against the plot really changed: by other code than its own, cell by cell and point by
 * point, and counted by what the takeoff lists. */
#include "support/book.h"
#include "support/fencing.h"
#include "support/garden.h"
#include "support/runner.h"
#include "support/shapes.h"
#include "base/number.h"
#include "plot/edit/lay.h"
#include "takeoff/advice/advice.h"
#include "takeoff/advice/near.h"
#include "takeoff/advice/propose.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static struct garden garden, other;
static struct advice advice;

static void teardown(void)
{
	garden_fini(&garden);
	garden_fini(&other);
}

static void advise(void)
{
	garden_count(&garden);
	advice_make(&advice, &garden.plot, &garden.takeoff);
	ck_assert(advice.is_tried);
}

/* ---- The change, made anew ------------------------------------------------------------------- */

/* Ways in which the mirror takes a place to another, itself first. */
struct flip {
	bool across, down;
};

static int flips_of(const struct mirror *mirror, struct flip flips[4])
{
	int count = 0;

	flips[count++] = (struct flip){ false, false };
	if (mirror->kind == MIRROR_LEFT_RIGHT || mirror->kind == MIRROR_FOUR_WAY)
		flips[count++] = (struct flip){ true, false };
	if (mirror->kind == MIRROR_TOP_BOTTOM || mirror->kind == MIRROR_FOUR_WAY)
		flips[count++] = (struct flip){ false, true };
	if (mirror->kind == MIRROR_FOUR_WAY || mirror->kind == MIRROR_HALF_TURN)
		flips[count++] = (struct flip){ true, true };
	return count;
}

/* off: 1 of cells, 0 of points. */
static struct place flipped(const struct mirror *mirror, struct flip flip, struct place at, int off)
{
	return (struct place){ flip.across ? mirror->across - off - at.x : at.x,
		flip.down ? mirror->down - off - at.y : at.y };
}

static bool is_in(struct rectangle r, int x, int y)
{
	return x >= r.left && x <= r.right && y >= r.top && y <= r.bottom;
}

static char letter_at(const struct plot *plot, int x, int y)
{
	return ground_holds(&plot->ground, x, y) ? ground_cell(&plot->ground, x, y) : OPEN_GROUND;
}

/* What a cell becomes that the bed gives up: what was beyond it. */
static char given_up(const struct proposal *p, int x, int y)
{
	if (x < p->to.left)
		return letter_at(&garden.plot, p->from.left - 1, y);
	if (x > p->to.right)
		return letter_at(&garden.plot, p->from.right + 1, y);
	return letter_at(&garden.plot, x, y < p->to.top ? p->from.top - 1 : p->from.bottom + 1);
}

static void put(struct plot *plot, struct place at, char letter)
{
	if (ground_holds(&plot->ground, at.x, at.y))
		*ground_at(&plot->ground, at.x, at.y) = letter;
}

/* First all that is given up, then all that is taken. */
static void change_size(struct plot *plot, const struct proposal *p)
{
	struct mirror mirror = mirror_of(plot);
	struct flip flips[4];
	int count = flips_of(&mirror, flips);

	for (int pass = 0; pass < 2; pass++)
		for (int i = 0; i < count; i++)
			for (int y = 0; y < plot->ground.rows; y++)
				for (int x = 0; x < plot->ground.columns; x++) {
					struct place to = flipped(&mirror, flips[i],
						(struct place){ x, y }, 1);

					if (pass == 0 && is_in(p->from, x, y) &&
						!is_in(p->to, x, y))
						put(plot, to, given_up(p, x, y));
					if (pass == 1 && is_in(p->to, x, y))
						put(plot, to, p->letter);
				}
}

/* All beds that are joined to those before them take the letter. */
static void change_joined(struct plot *plot, const struct proposal *p)
{
	for (int i = 1; i < p->region_count; i += 2)
		for (int y = 0; y < plot->ground.rows; y++)
			for (int x = 0; x < plot->ground.columns; x++)
				if (survey_region_at(&garden.takeoff.survey, x, y) == p->regions[i])
					put(plot, (struct place){ x, y }, p->letter);
}

static bool is_leg_of(const struct route *run, struct place a, struct place b)
{
	for (int i = 0; i + 1 < run->count; i++)
		if ((place_equal(run->points[i], a) && place_equal(run->points[i + 1], b)) ||
			(place_equal(run->points[i], b) && place_equal(run->points[i + 1], a)))
			return true;
	return false;
}

static bool is_between(struct place at, struct place a, struct place b)
{
	return (at.x - a.x) * (at.x - b.x) <= 0 && (at.y - a.y) * (at.y - b.y) <= 0;
}

/* The fence is one run. */
static void change_fence(struct plot *plot, const struct proposal *p)
{
	struct mirror mirror = mirror_of(plot);
	struct fence *fence = &plot->details.fences[p->fence];
	struct route *run = &fence->runs[0];
	const struct fence *before = &garden.plot.details.fences[p->fence];
	struct flip flips[4];
	int count = flips_of(&mirror, flips);

	ck_assert_uint_eq(fence->run_count, 1);
	for (int i = 0; i < count; i++) {
		struct place a = flipped(&mirror, flips[i], p->leg.from, 0);
		struct place b = flipped(&mirror, flips[i], p->leg.to, 0);
		int right = flips[i].across ? -p->right : p->right;
		int down = flips[i].down ? -p->down : p->down;

		if (!is_leg_of(&before->runs[0], a, b))
			continue;
		for (int j = 0; j < run->count; j++)
			if (place_equal(before->runs[0].points[j], a) ||
				place_equal(before->runs[0].points[j], b))
				run->points[j] = (struct place){
					before->runs[0].points[j].x + right,
					before->runs[0].points[j].y + down };
		for (size_t j = 0; j < fence->gates.count; j++) {
			struct leg gate = before->gates.items[j];

			if (is_between(gate.from, a, b) && is_between(gate.to, a, b))
				fence->gates.items[j] = (struct leg){
					{ gate.from.x + right, gate.from.y + down },
					{ gate.to.x + right, gate.to.y + down } };
		}
	}
}

static void change_letter(struct plot *plot, const struct proposal *p)
{
	for (size_t i = 0; i < plot->details.legend_count; i++) {
		struct entry *entry = &plot->details.legend[i];

		if (entry->letter != p->letter)
			continue;
		block_set(&entry->block, BED_COURSES,
			(struct value){ .set = true, .as.number = p->courses });
		if (p->kind == PROPOSE_BLOCK)
			block_set(&entry->block, BED_BLOCK,
				(struct value){ .set = true, .as.size = p->block });
	}
}

/* Makes the other garden the one that is proposed, and counts it. */
static void change(const struct proposal *p)
{
	static void (*const changes[])(struct plot *, const struct proposal *) = {
		[PROPOSE_SIZE] = change_size, [PROPOSE_COURSES] = change_letter,
		[PROPOSE_BLOCK] = change_letter, [PROPOSE_FENCE] = change_fence,
		[PROPOSE_JOINED] = change_joined,
	};

	arena_clear(&other.arena);
	plot_fini(&other.plot);
	other.plot = (struct plot){ details_copy(&garden.plot.details),
		ground_copy(&garden.plot.ground) };
	changes[p->kind](&other.plot, p);
	ck_assert(takeoff_compute(&other.takeoff, &other.arena, &other.plot,
		garden.has_book ? &garden.book : NULL));
}

/* ---- What it spares, by the list of goods ---------------------------------------------------- */

static double ordered(const struct takeoff *takeoff, enum good good)
{
	double sum = 0;

	for (size_t i = 0; i < takeoff->items.count; i++)
		if (takeoff->items.list[i].good == good)
			sum += takeoff->items.list[i].order;
	return sum;
}

static double weighed(const struct takeoff *takeoff)
{
	double sum = 0;

	for (size_t i = 0; i < takeoff->items.count; i++)
		if (takeoff->items.list[i].purchase)
			sum += takeoff->items.list[i].purchase->weight;
	return sum;
}

/* Of walls: the plots here have no caps. */
static int64_t sawn(const struct takeoff *takeoff)
{
	int64_t sum = 0;

	for (int i = 0; i < takeoff->walls.count; i++)
		sum += takeoff->walls.list[i].cut_pieces;
	return sum;
}

static int64_t panels_sawn(const struct takeoff *takeoff)
{
	int64_t sum = 0;

	for (int i = 0; i < takeoff->fences.count; i++)
		for (int j = 0; j < takeoff->fences.list[i].leg_count; j++)
			sum += takeoff->fences.list[i].legs[j].cut_count;
	return sum;
}

static int snags_of(const struct takeoff *takeoff, int code)
{
	int count = 0;

	for (size_t i = 0; i < takeoff->snags.count; i++)
		count += (int)takeoff->snags.list[i].code == code;
	return count;
}

static void check_difference(const struct difference *d)
{
	const struct takeoff *a = &garden.takeoff, *b = &other.takeoff;

	ck_assert_int_eq(d->blocks, (int64_t)(ordered(b, GOOD_BLOCK_WALL) -
		ordered(a, GOOD_BLOCK_WALL)));
	ck_assert_int_eq(d->cuts, sawn(b) - sawn(a));
	ck_assert_int_eq(d->panels, (int64_t)(ordered(b, GOOD_FENCE_PANEL) -
		ordered(a, GOOD_FENCE_PANEL)));
	ck_assert_int_eq(d->panel_pieces, panels_sawn(b) - panels_sawn(a));
	ck_assert_double_eq_tol(d->weight, weighed(b) - weighed(a), 0.002);
	ck_assert_int_eq(d->cost, d->has_cost ? b->costs.total - a->costs.total : 0);
	ck_assert(garden.has_book || !d->has_cost);
}

static bool is_spared(const struct proposal *p)
{
	const struct difference *d = &p->difference;

	switch (p->kind) {
	case PROPOSE_SIZE:
		return d->cuts < 0;
	case PROPOSE_COURSES:
	case PROPOSE_JOINED:
		return d->blocks < 0;
	case PROPOSE_BLOCK:
		return d->cost < 0 || d->cuts < 0;
	case PROPOSE_FENCE:
		return d->panel_pieces < 0;
	}
	return false;
}

static bool is_region(const struct takeoff *takeoff, struct place a, struct place b)
{
	const struct survey *survey = &takeoff->survey;
	int region = survey_region_at(survey, least(a.x, b.x), least(a.y, b.y));
	const struct region *r = &survey->regions[most(region, 0)];

	return region != NO_REGION && r->left == least(a.x, b.x) && r->most.x == most(a.x, b.x) &&
		r->first_cell.y == least(a.y, b.y) && r->most.y == most(a.y, b.y) &&
		r->cells == (abs(a.x - b.x) + 1) * (abs(a.y - b.y) + 1);
}

/* The bed and its images in the plan are each a rectangle by itself. */
static void check_rectangles(const struct takeoff *takeoff, struct rectangle r)
{
	const struct mirror mirror = mirror_of(&garden.plot);
	struct flip flips[4];
	int count = flips_of(&mirror, flips);

	for (int i = 0; i < count; i++) {
		struct place a = flipped(&mirror, flips[i], (struct place){ r.left, r.top }, 1);
		struct place b = flipped(&mirror, flips[i], (struct place){ r.right, r.bottom }, 1);

		ck_assert(is_region(takeoff, a, b));
	}
}

static void check_sound(const struct proposal *p)
{
	if (p->kind == PROPOSE_SIZE) {
		check_rectangles(&garden.takeoff, p->from);
		check_rectangles(&other.takeoff, p->to);
	}
	ck_assert(is_spared(p));
	for (int code = 0; code < SNAG_CODES; code++)
		ck_assert_int_le(snags_of(&other.takeoff, code), snags_of(&garden.takeoff, code));
	ck_assert_int_eq(other.takeoff.walls.not_laid_count, garden.takeoff.walls.not_laid_count);
	for (int i = 0; p->kind == PROPOSE_COURSES && i < other.takeoff.fills.count; i++) {
		const struct fill *fill = &other.takeoff.fills.list[i];

		if (other.takeoff.survey.regions[fill->region].entry->letter == p->letter)
			ck_assert_int_ge(fill->soil_depth,
				block_length(other.takeoff.allow, ALLOW_SOIL_LEAST));
	}
}

/* Of the bed and its images those that are in the plan, each once, itself first. */
static void check_images(const struct proposal *p)
{
	const struct survey *survey = &garden.takeoff.survey;
	const struct mirror mirror = mirror_of(&garden.plot);
	int wanted[4], wanted_count = 0, count;
	struct flip flips[4];

	count = flips_of(&mirror, flips);
	for (int i = 0; i < count; i++) {
		struct place at = flipped(&mirror, flips[i],
			(struct place){ p->from.left, p->from.top }, 1);
		int region = ground_holds(&garden.plot.ground, at.x, at.y) ?
			survey_region_at(survey, at.x, at.y) : NO_REGION;
		bool is_new = region != NO_REGION;

		for (int j = 0; j < wanted_count; j++)
			is_new = is_new && wanted[j] != region;
		if (is_new)
			wanted[wanted_count++] = region;
	}
	ck_assert_int_gt(wanted_count, 0);
	ck_assert_int_eq(p->regions[0], wanted[0]);
	ck_assert_int_eq(p->region_count, wanted_count);
	for (int i = 0; i < wanted_count; i++) {
		bool is_named = false;

		for (int j = 0; j < p->region_count; j++)
			is_named = is_named || p->regions[j] == wanted[i];
		ck_assert(is_named);
	}
}

/* The fence is one run: a leg of it and its images, each once. */
static int legs_named(const struct proposal *p)
{
	const struct route *run = &garden.plot.details.fences[p->fence].runs[0];
	const struct mirror mirror = mirror_of(&garden.plot);
	struct flip flips[4];
	int flip_count = flips_of(&mirror, flips), count = 0;

	for (int i = 0; i + 1 < run->count; i++) {
		bool is_image = false;

		for (int j = 0; j < flip_count; j++) {
			struct place a = flipped(&mirror, flips[j], p->leg.from, 0);
			struct place b = flipped(&mirror, flips[j], p->leg.to, 0);

			is_image = is_image || (place_equal(run->points[i], a) &&
				place_equal(run->points[i + 1], b)) ||
				(place_equal(run->points[i], b) &&
				place_equal(run->points[i + 1], a));
		}
		count += is_image;
	}
	return count;
}

/* What is said to be changed: beds, with their letter, and legs. */
static void check_named(const struct proposal *p)
{
	const struct survey *survey = &garden.takeoff.survey;

	if (p->kind == PROPOSE_SIZE)
		check_images(p);
	if (p->kind == PROPOSE_FENCE)
		ck_assert_int_eq(p->leg_count, legs_named(p));
	for (int i = 0; p->kind == PROPOSE_JOINED && i < p->region_count; i += 2) {
		ck_assert_int_eq(survey->regions[p->regions[i]].entry->letter, p->letter);
		ck_assert_int_ne(survey->regions[p->regions[i + 1]].entry->letter, p->letter);
		ck_assert_int_eq(survey_region_at(survey, p->at[i / 2].x, p->at[i / 2].y),
			p->regions[i + 1]);
	}
}

/* Money first, then pieces and panels to saw, then blocks, then weight. */
static bool spares_more(const struct difference *a, const struct difference *b)
{
	int64_t sawn_less = b->cuts + b->panel_pieces - a->cuts - a->panel_pieces;

	if (a->cost != b->cost)
		return a->cost < b->cost;
	if (sawn_less != 0)
		return sawn_less > 0;
	return a->blocks != b->blocks ? a->blocks < b->blocks : a->weight < b->weight;
}

/* Every claim is that of the changed plot; kinds are counted in seen. */
static void check_advice(int seen[PROPOSAL_KINDS])
{
	int of_kind[PROPOSAL_KINDS] = { 0 };

	ck_assert_int_le(advice.count, ADVICE_MOST);
	for (int i = 0; i < advice.count; i++) {
		const struct proposal *p = &advice.list[i];

		change(p);
		check_difference(&p->difference);
		check_sound(p);
		check_named(p);
		ck_assert_int_le(++of_kind[p->kind], ADVICE_OF_KIND_MOST);
		if (i > 0)
			ck_assert(!spares_more(&p->difference, &p[-1].difference));
		seen[p->kind]++;
	}
}

/* ---- At random ------------------------------------------------------------------------------- */

static const char *const blocks[] = { "16 in x 8 in x 6 in", "1 ft x 6 in x 4 in",
	"1 ft x 8 in x 4 in", "18 in x 6 in x 6 in", "11 in x 7 in x 4 in" };
static const char *const courses[] = { "2", "3", "4", "6" };
static const char *const kinds[] = { "off", "left-right", "top-bottom", "four-way", "half-turn" };

static void lay(struct random *random, char letter, int most)
{
	struct ground *ground = &garden.plot.ground;
	int x = random_below(random, ground->columns), y = random_below(random, ground->rows);

	lay_rectangle(&garden.plot, rectangle_within((struct rectangle){ x, y,
		x + random_between(random, 2, most), y + random_between(random, 2, most) },
		ground), letter);
}

static void fence_round(struct random *random)
{
	int right = garden.plot.ground.columns, bottom = garden.plot.ground.rows;
	char run[96];
	int in = random_below(random, 3);

	snprintf(run, sizeof run, "%d,%d %d,%d %d,%d %d,%d %d,%d", in, in, right - in, in,
		right - in, bottom - in, in, bottom - in, in, in);
	fences_run(&garden.plot, run);
	if (random_below(random, 2)) {
		snprintf(run, sizeof run, "%d,%d %d,%d", in + 3, bottom - in, in + 6, bottom - in);
		fences_gate(&garden.plot, run);
	}
}

/* Beds of two letters, at times wall to wall and built alike, path, lawn and an urn; now and then
 * something that is not mirrored. */
static void garden_at_random(struct random *random)
{
	const char *const nothing[] = { "abplS.", NULL };
	const char *block = blocks[random_below(random, 5)];
	const char *mirror = kinds[random_below(random, 5)];
	bool is_alike = random_below(random, 2);

	garden_rows(&garden, nothing);
	ground_fini(&garden.plot.ground);
	ground_init(&garden.plot.ground, random_between(random, 12, 30),
		random_between(random, 12, 24));
	plot_set(&garden.plot, 0, HEAD_MIRROR, mirror);
	for (const char *letter = "lppaabbS"; *letter; letter++)
		if (random_below(random, 3))
			lay(random, *letter, *letter == 'S' ? 2 : 8);
	if (random_below(random, 3) == 0) {
		plot_set(&garden.plot, 0, HEAD_MIRROR, "off");
		lay(random, "ab."[random_below(random, 3)], 5);
		plot_set(&garden.plot, 0, HEAD_MIRROR, mirror);
	}
	for (const char *letter = "ab"; *letter; letter++) {
		plot_set(&garden.plot, *letter, BED_BLOCK, is_alike ? block :
			blocks[random_below(random, 5)]);
		if (!is_alike)
			plot_set(&garden.plot, *letter, BED_COURSES,
				courses[random_below(random, 4)]);
	}
	if (random_below(random, 2))
		fence_round(random);
	if (random_below(random, 2))
		garden_book(&garden, "plots/prices.json");
}

START_TEST(each_claim_on_random_gardens_is_that_of_the_changed_plot)
{
	int seen[PROPOSAL_KINDS] = { 0 };

	for (int i = 0; i < runner_count(120, 3000); i++) {
		struct random random = { (uint64_t)i };

		garden_at_random(&random);
		advise();
		check_advice(seen);
		garden_fini(&garden);
	}
	for (int kind = 0; kind < PROPOSAL_KINDS; kind++)
		ck_assert_msg(seen[kind] > 0, "kind %d", kind);
}
END_TEST

START_TEST(mirrored_gardens_stay_mirrored)
{
	int seen = 0;

	for (int i = 0; i < runner_count(120, 3000); i++) {
		struct random random = { (uint64_t)i };
		struct mirror mirror;

		garden_at_random(&random);
		advise();
		mirror = mirror_of(&garden.plot);
		for (int j = 0; j < advice.count && mirror.kind != MIRROR_OFF; j++, seen++) {
			change(&advice.list[j]);
			ck_assert_int_le(mirror_faults(&mirror, &other.plot.ground),
				mirror_faults(&mirror, &garden.plot.ground));
		}
		garden_fini(&garden);
	}
	ck_assert_int_gt(seen, 10);
}
END_TEST

/* ---- No size is missed ----------------------------------------------------------------------- */

/* A bed with open ground, path, lawn and an urn around it, its left top corner at 6, 6. */
static void lone_bed(struct random *random)
{
	const char *const nothing[] = { "bplS.", NULL };
	int width = random_between(random, 3, 7), height = random_between(random, 3, 7);

	garden_rows(&garden, nothing);
	ground_fini(&garden.plot.ground);
	ground_init(&garden.plot.ground, random_between(random, 13, 20),
		random_between(random, 13, 20));
	for (const char *letter = "lpSSSS"; *letter; letter++)
		if (random_below(random, 2))
			lay(random, *letter, *letter == 'S' ? 2 : 12);
	lay_rectangle(&garden.plot, (struct rectangle){ 6, 6, least(6 + width - 1,
		garden.plot.ground.columns - 1), least(6 + height - 1,
		garden.plot.ground.rows - 1) }, 'b');
	plot_set(&garden.plot, 'b', BED_BLOCK, blocks[random_below(random, 5)]);
}

static bool is_bare(struct rectangle r, struct rectangle but)
{
	for (int y = r.top; y <= r.bottom; y++)
		for (int x = r.left; x <= r.right; x++)
			if (!is_in(but, x, y) && (!ground_holds(&garden.plot.ground, x, y) ||
				plot_class_of(&garden.plot, letter_at(&garden.plot, x, y)) ==
				CLASS_FIXTURE))
				return false;
	return true;
}

/* What is beyond the sides that are moved inward may be no fixture. */
static bool can_be_given_up(const struct proposal *p)
{
	for (int y = p->from.top; y <= p->from.bottom; y++)
		for (int x = p->from.left; x <= p->from.right; x++)
			if (!is_in(p->to, x, y) && plot_class_of(&garden.plot,
				given_up(p, x, y)) == CLASS_FIXTURE)
				return false;
	return true;
}

/* Whether the bed could be so many cells wider and deeper, in this of the ways there are. */
static bool would_do(struct rectangle from, int more_x, int more_y, int way)
{
	int left = way % 3 == 1 ? more_x : way % 3 == 2 ? more_x / 2 : 0;
	int top = way / 3 == 1 ? more_y : way / 3 == 2 ? more_y / 2 : 0;
	struct proposal p = { .kind = PROPOSE_SIZE, .letter = 'b', .from = from,
		.to = { from.left - left, from.top - top, from.right + more_x - left,
			from.bottom + more_y - top } };

	if ((way % 3 == 2 && more_x % 2) || (way / 3 == 2 && more_y % 2) ||
		p.to.right < p.to.left || p.to.bottom < p.to.top || !is_bare(p.to, from) ||
		!can_be_given_up(&p))
		return false;
	change(&p);
	if (other.takeoff.walls.count != 1 || other.takeoff.walls.list[0].cut_pieces > 0 ||
		sawn(&garden.takeoff) == 0)
		return false;
	for (int code = 0; code < SNAG_CODES; code++)
		if (snags_of(&other.takeoff, code) > snags_of(&garden.takeoff, code))
			return false;
	return true;
}

static bool would_do_somehow(struct rectangle from, int more_x, int more_y)
{
	bool would = false;

	for (int way = 0; way < 9 && !would; way++)
		would = would_do(from, more_x, more_y, way);
	return would;
}

/* Whether the advice has that size. */
static bool is_told(int columns, int rows)
{
	bool told = false;

	for (int i = 0; i < advice.count; i++) {
		struct rectangle to = advice.list[i].to;

		told = told || (advice.list[i].kind == PROPOSE_SIZE &&
			to.right - to.left + 1 == columns && to.bottom - to.top + 1 == rows);
	}
	return told;
}

/* In order of nearness, by other loops than those of near.c. */
static int check_sizes(struct rectangle from)
{
	int told = 0;

	for (int off = 1; off <= NEAR_REACH; off++)
		for (int x = -off; x <= off; x++)
			for (int y = -off; y <= off; y++) {
				bool is_wanted = abs(x) + abs(y) == off && told < SIZES_TOLD &&
					would_do_somehow(from, x, y);

				if (abs(x) + abs(y) != off)
					continue;
				ck_assert_msg(is_told(from.right - from.left + 1 + x,
					from.bottom - from.top + 1 + y) == is_wanted, "%d, %d", x,
					y);
				told += is_wanted;
			}
	return told;
}

START_TEST(the_nearest_sizes_that_would_do_are_told_and_no_others)
{
	int told = 0;

	for (int i = 0; i < runner_count(24, 400); i++) {
		struct random random = { (uint64_t)i };
		const struct region *bed;

		lone_bed(&random);
		advise();
		bed = &garden.takeoff.survey.regions[
			survey_region_at(&garden.takeoff.survey, 6, 6)];
		if (garden.takeoff.walls.count == 1)
			told += check_sizes((struct rectangle){ bed->left, bed->first_cell.y,
				bed->most.x, bed->most.y });
		garden_fini(&garden);
	}
	ck_assert_int_gt(told, 10);
}
END_TEST

/* ---- One kind after another ------------------------------------------------------------------ */

static int told_count(enum proposal_kind kind)
{
	int count = 0;

	for (int i = 0; i < advice.count; i++)
		count += advice.list[i].kind == kind;
	return count;
}

/* The proposal of that number among those of its kind. */
static struct proposal told(enum proposal_kind kind, int index)
{
	int at = 0;

	ck_assert_int_lt(index, told_count(kind));
	while (advice.list[at].kind != kind || index-- > 0)
		at++;
	return advice.list[at];
}

#define ROWS (const char *const[])
static const char *const lone[] = { "..........", ".bbbbbbbb.", ".bbbbbbbb.", ".bbbbbbbb.",
	".bbbbbbbb.", "..........", NULL };

/* Of 18 in by 6 in sides of 2, 5 and 8 ft need no cut; the one course of 3 x 5 ft has one. */
START_TEST(a_size_that_spares_the_only_cut_is_told)
{
	garden_rows(&garden, ROWS { ".......", "..bbb..", "..bbb..", "..bbb..", "..bbb..",
		"..bbb..", ".......", NULL });
	plot_set(&garden.plot, 'b', BED_BLOCK, "18 in x 6 in x 6 in");
	plot_set(&garden.plot, 'b', BED_COURSES, "1");
	advise();
	ck_assert_int_eq(garden.takeoff.walls.list[0].cut_pieces, 1);
	ck_assert(is_told(2, 5));
}
END_TEST

/* 2 (96 + 48) - 4 x 8 = 256 in of run: 16 blocks of 16 in a course, and none is spare. */
START_TEST(a_course_less_is_told_as_long_as_the_soil_is_deep_enough)
{
	garden_rows(&garden, lone);
	plot_set(&garden.plot, 'b', BED_COURSES, "4");
	plot_set(&garden.plot, 0, ALLOW_BREAKAGE, "0 %");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_COURSES), 1);
	ck_assert_int_eq(told(PROPOSE_COURSES, 0).courses, 3);
	ck_assert_int_eq(told(PROPOSE_COURSES, 0).letter, 'b');
	ck_assert_int_eq(told(PROPOSE_COURSES, 0).difference.blocks, -16);
	/* 18 in, less 1 1/2 in, 2 in and 2 in of embed, are left. */
	plot_set(&garden.plot, 0, ALLOW_SOIL_LEAST, "12.5 in");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_COURSES), 1);
	plot_set(&garden.plot, 0, ALLOW_SOIL_LEAST, "12.6 in");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_COURSES), 0);
	/* Too little as it is: no snag is new. */
	plot_set(&garden.plot, 0, ALLOW_SOIL_LEAST, "30 in");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_COURSES), 0);
}
END_TEST

/* Of 6 in and of 9 in at these prices, of 4 in nearly for nothing; adhesive is free. */
static void priced_blocks(const char *low, const char *high)
{
	char goods[768];

	snprintf(goods, sizeof goods, "'goods': ["
		"{'item': 'block.wall', 'block': '16 in x 8 in x 6 in', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': %s}]}, "
		"{'item': 'block.wall', 'block': '16 in x 8 in x 9 in', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': %s}]}, "
		"{'item': 'block.wall', 'block': '16 in x 8 in x 4 in', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 0.01}]}, "
		"{'item': 'adhesive.cartridge', 'packs': "
		"[{'pack': 'piece', 'size': 1, 'price': 0}]}]", low, high);
	if (garden.has_book)
		book_fini(&garden.book);
	book_of(&garden.book, goods);
	garden.has_book = true;
}

/* 18 in high: 3 courses of 6 in or 2 of 9 in, none of 4 in. 48 blocks or 32. */
START_TEST(another_block_is_told_where_it_is_as_high_and_costs_less)
{
	garden_rows(&garden, lone);
	plot_set(&garden.plot, 0, ALLOW_BREAKAGE, "0 %");
	priced_blocks("2.00", "2.90");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_BLOCK), 1);
	ck_assert_int_eq(told(PROPOSE_BLOCK, 0).courses, 2);
	ck_assert_int_eq(told(PROPOSE_BLOCK, 0).block.up, 9 * NM_PER_INCH);
	ck_assert_int_eq(told(PROPOSE_BLOCK, 0).difference.blocks, -16);
	ck_assert(told(PROPOSE_BLOCK, 0).difference.has_cost);
	ck_assert_int_eq(told(PROPOSE_BLOCK, 0).difference.cost, 32 * 290 - 48 * 200);
	priced_blocks("2.00", "3.00");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_BLOCK), 0);
}
END_TEST

/* Soil has no price: what it would cost less nobody knows. */
/* In 2 ft there is room for walls of 8 in, not of 12 in: with that block another bed is built. */
START_TEST(no_change_is_told_by_which_more_beds_are_built)
{
	for (int narrow = 0; narrow < 2; narrow++) {
		garden_rows(&garden, narrow ? ROWS { "bbbbbbbb.bb", "bbbbbbbb.bb", "bbbbbbbb.bb",
			"bbbbbbbb.bb", NULL } : lone);
		plot_set(&garden.plot, 'b', BED_BLOCK, "16 in x 12 in x 6 in");
		plot_set(&garden.plot, 'b', BED_REACH_IN, "0 in");
		priced_blocks("0.10", "0.10");
		advise();
		ck_assert_int_eq(garden.takeoff.walls.not_laid_count, narrow);
		ck_assert_int_eq(told_count(PROPOSE_BLOCK) > 0, !narrow);
		garden_fini(&garden);
	}
}
END_TEST

START_TEST(no_money_is_told_where_something_that_differs_has_no_price)
{
	garden_rows(&garden, lone);
	plot_set(&garden.plot, 'b', BED_COURSES, "4");
	priced_blocks("2.00", "2.90");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_COURSES), 1);
	ck_assert(!told(PROPOSE_COURSES, 0).difference.has_cost);
	ck_assert_int_eq(told(PROPOSE_COURSES, 0).difference.cost, 0);
}
END_TEST

/* Twice 4 ft less four corners of 8 in, in 3 courses of 16 in blocks: 12. */
START_TEST(beds_wall_to_wall_and_built_alike_could_be_one)
{
	garden_rows(&garden, ROWS { "aaaaaaaabbbbbbbb", "aaaaaaaabbbbbbbb", "aaaaaaaabbbbbbbb",
		"aaaaaaaabbbbbbbb", NULL });
	plot_set(&garden.plot, 0, ALLOW_BREAKAGE, "0 %");
	plot_set(&garden.plot, 0, ALLOW_ARM, "4 ft");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_JOINED), 1);
	ck_assert_int_eq(told(PROPOSE_JOINED, 0).regions[0], 0);
	ck_assert_int_eq(told(PROPOSE_JOINED, 0).regions[1], 1);
	ck_assert_int_eq(told(PROPOSE_JOINED, 0).letter, 'a');
	ck_assert_int_eq(told(PROPOSE_JOINED, 0).difference.blocks, -12);
	plot_set(&garden.plot, 'b', BED_MULCH, "1 in");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_JOINED), 0);
}
END_TEST

/* As one they would be one with the third too, and that is another change. */
START_TEST(beds_are_not_joined_to_more_than_is_said)
{
	garden_rows(&garden, ROWS { "aaaaaaaabbbbbbbbaaaaaaaa", "aaaaaaaabbbbbbbbaaaaaaaa",
		"aaaaaaaabbbbbbbbaaaaaaaa", "aaaaaaaabbbbbbbbaaaaaaaa", NULL });
	plot_set(&garden.plot, 0, ALLOW_ARM, "4 ft");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_JOINED), 1);
	ck_assert_int_eq(told(PROPOSE_JOINED, 0).letter, 'b');
	check_advice((int[PROPOSAL_KINDS]){ 0 });
}
END_TEST

/* One over the other, and as images of each other. */
START_TEST(images_are_joined_together)
{
	garden_rows(&garden, ROWS { "aaaaa.aaaaa", "aaaaa.aaaaa", "aaaaa.aaaaa", "bbbbb.bbbbb",
		"bbbbb.bbbbb", "bbbbb.bbbbb", NULL });
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	plot_set(&garden.plot, 0, ALLOW_ARM, "4 ft");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_JOINED), 1);
	ck_assert_int_eq(told(PROPOSE_JOINED, 0).region_count, 4);
	check_advice((int[PROPOSAL_KINDS]){ 0 });
}
END_TEST

/* The bed is joined on the left; on the right there is lawn. */
START_TEST(beds_are_not_joined_where_the_mirror_is_broken)
{
	garden_rows(&garden, ROWS { "aaaaaaaa.aaaaaaaa", "aaaaaaaa.aaaaaaaa",
		"aaaaaaaa.aaaaaaaa", "aaaaaaaa.aaaaaaaa", "bbbbbbbb.llllllll",
		"bbbbbbbb.llllllll", "bbbbbbbb.llllllll", "bbbbbbbb.llllllll", NULL });
	plot_set(&garden.plot, 0, ALLOW_ARM, "4 ft");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_JOINED), 1);
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_JOINED), 0);
}
END_TEST

START_TEST(a_bed_grows_over_no_fixture_and_gives_none_ground)
{
	static const char *const among[][11] = {
		{ ".............", ".............", ".............", "....bbbbb....",
			"....bbbbb....", "....bbbbb....", "....bbbbb....", ".............",
			".............", ".............", NULL },
		{ ".............", ".............", "....SSSSS....", "...SbbbbbS...",
			"...SbbbbbS...", "...SbbbbbS...", "...SbbbbbS...", "....SSSSS....",
			".............", ".............", NULL } };

	for (int i = 0; i < 2; i++) {
		garden_rows(&garden, among[i]);
		advise();
		ck_assert_int_eq(told_count(PROPOSE_SIZE), i == 0 ? SIZES_TOLD : 0);
		garden_fini(&garden);
	}
}
END_TEST

/* A column is given up to the lawn at the right, a row is taken from the path below. */
START_TEST(only_what_the_bed_gives_up_or_takes_is_other_ground)
{
	static const char *const after[] = { "bbbbll", "bbbbll", "bbbbll", "bbbbpl", "pppppl" };

	garden_rows(&garden, ROWS { "bbbbbl", "bbbbbl", "bbbbbl", "pppppl", "pppppl", NULL });
	ck_assert(proposal_apply(&garden.plot, &(struct proposal){ .kind = PROPOSE_SIZE,
		.letter = 'b', .from = { 0, 0, 4, 2 }, .to = { 0, 0, 3, 3 } }));
	for (int y = 0; y < 5; y++)
		ck_assert_mem_eq(ground_at(&garden.plot.ground, 0, y), after[y], 6);
}
END_TEST

/* A bed in the middle of four of its letter, three cells from each. */
static bool can_grow(int left, int up, int right, int down)
{
	bool can;

	garden_rows(&garden, ROWS { "....bbb....", "...........", "...........", "...........",
		"b...bbb...b", "b...bbb...b", "b...bbb...b", "...........", "...........",
		"...........", "....bbb....", NULL });
	can = proposal_apply(&garden.plot, &(struct proposal){ .kind = PROPOSE_SIZE,
		.letter = 'b', .from = { 4, 4, 6, 6 },
		.to = { 4 - left, 4 - up, 6 + right, 6 + down } });
	plot_fini(&garden.plot);
	plot_init(&garden.plot);
	return can;
}

START_TEST(a_bed_grows_till_it_would_meet_another_of_its_letter)
{
	for (int side = 0; side < 4; side++)
		for (int more = 0; more <= 3; more++) {
			int by[4] = { 0 };

			by[side] = more;
			ck_assert_int_eq(can_grow(by[0], by[1], by[2], by[3]), more < 3);
		}
}
END_TEST

/* Of 18 in by 6 in sides of 2, 5 and 8 ft need no cut. */
START_TEST(a_bed_on_the_axis_is_changed_at_both_sides)
{
	garden_rows(&garden, ROWS { ".............", "...bbbbbbb...", "...bbbbbbb...",
		"...bbbbbbb...", "...bbbbbbb...", "...bbbbbbb...", ".............", NULL });
	plot_set(&garden.plot, 0, HEAD_MIRROR, "left-right");
	plot_set(&garden.plot, 'b', BED_BLOCK, "18 in x 6 in x 6 in");
	advise();
	ck_assert_int_gt(told_count(PROPOSE_SIZE), 0);
	for (int i = 0; i < told_count(PROPOSE_SIZE); i++) {
		struct rectangle to = told(PROPOSE_SIZE, i).to;

		ck_assert_int_eq(to.left + to.right, 12);
		ck_assert_int_eq(told(PROPOSE_SIZE, i).region_count, 1);
	}
	check_advice((int[PROPOSAL_KINDS]){ 0 });
}
END_TEST

static int64_t sawn_with(struct leg leg, int right, int down)
{
	const struct proposal p = { .kind = PROPOSE_FENCE, .leg = leg, .right = right,
		.down = down };
	bool is_new = false;

	change(&p);
	for (int code = 0; code < SNAG_CODES; code++)
		is_new = is_new || snags_of(&other.takeoff, code) > snags_of(&garden.takeoff, code);
	return is_new ? INT64_MAX : panels_sawn(&other.takeoff);
}

/* The way of a leg that leaves the fewest panels to saw, the shortest first; 0: as it is. */
static int best_way(struct leg leg, int most_left, int most_right)
{
	int64_t best = panels_sawn(&garden.takeoff);
	int way = 0;

	for (int off = 1; off <= FENCE_REACH; off++)
		for (int to = -off; to <= off; to += 2 * off) {
			int64_t sawn_then = to < -most_left || to > most_right ? INT64_MAX :
				sawn_with(leg, leg_is_upright(leg) ? to : 0,
				leg_is_upright(leg) ? 0 : to);

			if (sawn_then >= best)
				continue;
			best = sawn_then;
			way = to;
		}
	return way;
}

/* How a leg would be moved; 0: not at all. */
static int told_way(struct leg leg)
{
	int way = 0;

	for (int i = 0; i < told_count(PROPOSE_FENCE); i++)
		if (leg_equal(told(PROPOSE_FENCE, i).leg, leg))
			way = told(PROPOSE_FENCE, i).right + told(PROPOSE_FENCE, i).down;
	return way;
}

static void fence_about(int width, int height, const char *mirror)
{
	char run[96];

	fences_ground(&garden.plot, width + 10, height + 10);
	snprintf(run, sizeof run, "5,5 %d,5 %d,%d 5,%d 5,5", width + 5, width + 5, height + 5,
		height + 5);
	fences_run(&garden.plot, run);
	plot_set(&garden.plot, 0, HEAD_MIRROR, mirror);
}

/* Sections of 8 ft: of 17 ft by 9 ft each side has a foot over. */
START_TEST(a_leg_is_moved_the_shortest_way_to_the_fewest_panels_to_saw)
{
	for (int width = 9; width <= 19; width += 2)
		for (int height = 9; height <= 13; height += 2) {
			const struct leg legs[] = {
				{ { 5, 5 }, { width + 5, 5 } },
				{ { 5, height + 5 }, { width + 5, height + 5 } },
				{ { 5, 5 }, { 5, height + 5 } },
				{ { width + 5, 5 }, { width + 5, height + 5 } } };
			int missing = 0, ways = 0;

			fence_about(width, height, "off");
			advise();
			for (int i = 0; i < 4; i++) {
				int way = best_way(legs[i], 5, 5);
				int named = told_way(legs[i]);

				ways += way != 0;
				missing += way != 0 && named == 0;
				ck_assert(named == 0 || named == way);
			}
			ck_assert_int_eq(missing, ways > ADVICE_OF_KIND_MOST ?
				ways - ADVICE_OF_KIND_MOST : 0);
			check_advice((int[PROPOSAL_KINDS]){ 0 });
			garden_fini(&garden);
		}
}
END_TEST

/* 18 ft by 8 ft: a foot off at either end of the longer sides leaves them two whole panels. */
START_TEST(a_leg_of_a_mirrored_fence_is_moved_with_its_image)
{
	fence_about(18, 8, "left-right");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_FENCE), 1);
	ck_assert_int_eq(told(PROPOSE_FENCE, 0).leg_count, 2);
	ck_assert_int_eq(told(PROPOSE_FENCE, 0).right, 1);
	ck_assert_int_eq(told(PROPOSE_FENCE, 0).difference.panel_pieces, -4);
	check_advice((int[PROPOSAL_KINDS]){ 0 });
}
END_TEST

/* 18 ft by 8 ft as before. Legs nearer to a plant take sun from it, mornings and evenings: where it
 * has just what it needs they go the longer way, outwards. */
START_TEST(no_change_is_told_by_which_a_plant_lacks_sun)
{
	char hours[24];

	fence_about(18, 8, "left-right");
	plot_set(&garden.plot, 0, HEAD_SITE, "45");
	plot_add_lines(&garden.plot, "plant z \"Rose\"\n  sun full\n  at 8,9\n  at 19,9\n");
	plot_set(&garden.plot, 0, ALLOW_SUN_FULL, "20");
	garden_count(&garden);
	snprintf(hours, sizeof hours, "%.6f", (double)garden_snag(&garden, SNAG_PLANT_SUN,
		0)->figures[1] / 60);
	plot_set(&garden.plot, 0, ALLOW_SUN_FULL, "2");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_FENCE), 1);
	ck_assert_int_eq(told(PROPOSE_FENCE, 0).right, 1);
	plot_set(&garden.plot, 0, ALLOW_SUN_FULL, hours);
	advise();
	ck_assert_ptr_null(garden_snag(&garden, SNAG_PLANT_SUN, 0));
	ck_assert_int_eq(told_count(PROPOSE_FENCE), 1);
	ck_assert_int_eq(told(PROPOSE_FENCE, 0).right, -3);
}
END_TEST

/* 16 ft by 4 ft: two feet off the axis, the longer sides go two feet further, a panel apart. */
START_TEST(a_leg_goes_off_as_far_as_it_is_from_the_axis)
{
	fence_about(16, 4, "top-bottom");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_FENCE), 1);
	ck_assert_int_eq(told(PROPOSE_FENCE, 0).leg_count, 2);
	ck_assert_int_eq(told(PROPOSE_FENCE, 0).down, -2);
	check_advice((int[PROPOSAL_KINDS]){ 0 });
}
END_TEST

/* The run that ends at the right leg would end in the air, or begin there. */
START_TEST(a_leg_that_a_run_ends_at_stays)
{
	fence_about(17, 8, "off");
	fences_run(&garden.plot, "22,9 26,9");
	advise();
	ck_assert_int_eq(told_way((struct leg){ { 5, 5 }, { 5, 13 } }), 1);
	ck_assert_int_eq(told_way((struct leg){ { 22, 5 }, { 22, 13 } }), 0);
}
END_TEST

/* Whether the right leg can be moved to the left by so much, by itself. */
static bool can_move(int left)
{
	struct plot plot = { details_copy(&garden.plot.details), ground_copy(&garden.plot.ground) };
	bool can = proposal_apply(&plot, &(struct proposal){ .kind = PROPOSE_FENCE,
		.leg = { { 22, 5 }, { 22, 13 } }, .right = -left });

	plot_fini(&plot);
	return can;
}

/* Whether a run that stands free can be moved to the right by so much, beside a level one. */
static bool can_move_free(const char *level, int right)
{
	bool can;

	fences_ground(&garden.plot, 24, 12);
	fences_run(&garden.plot, "10,3 10,8");
	fences_run(&garden.plot, level);
	can = proposal_apply(&garden.plot, &(struct proposal){ .kind = PROPOSE_FENCE,
		.leg = { { 10, 3 }, { 10, 8 } }, .right = right });
	plot_fini(&garden.plot);
	plot_init(&garden.plot);
	return can;
}

START_TEST(a_leg_ends_amid_no_other)
{
	ck_assert(can_move_free("12,8 18,8", 1));
	ck_assert(!can_move_free("12,8 18,8", 4));
	ck_assert(!can_move_free("12,3 18,3", 4));
	ck_assert(can_move_free("12,9 18,9", 4));
	ck_assert(!can_move_free("2,6 6,6", -4)); /* nor has one that ends amid itself */
	ck_assert(!can_move_free("14,6 18,6", 4));
	ck_assert(can_move_free("2,6 6,6", -3));
}
END_TEST

/* Over the run beside it, it would stand across it. */
START_TEST(a_leg_is_not_moved_across_another)
{
	fence_about(17, 8, "off");
	fences_run(&garden.plot, "23,9 26,9");
	ck_assert(can_move(1));
	ck_assert(!can_move(-1));
	ck_assert(!can_move(-2));
}
END_TEST

START_TEST(a_gate_goes_with_its_leg)
{
	fence_about(17, 8, "off");
	fences_gate(&garden.plot, "22,7 22,11");
	ck_assert(can_move(1));
	ck_assert(can_move(-2));
}
END_TEST

START_TEST(a_leg_stops_at_a_gate_at_the_next_one_and_at_the_edge)
{
	fence_about(17, 8, "off");
	ck_assert(can_move(16));
	ck_assert(!can_move(17));
	ck_assert(can_move(-5));
	ck_assert(!can_move(-6));
	fences_gate(&garden.plot, "14,5 18,5");
	ck_assert(can_move(4));
	ck_assert(!can_move(5));
}
END_TEST

START_TEST(a_fence_is_moved_over_no_bed_and_no_fixture)
{
	fence_about(17, 8, "off");
	advise();
	ck_assert_int_ne(told_way((struct leg){ { 22, 5 }, { 22, 13 } }), 0);
	details_add_entry(&garden.plot.details, CLASS_FIXTURE, 'S', memory_string("Urn"));
	for (int x = 18; x < 26; x++)
		*ground_at(&garden.plot.ground, x, 9) = 'S';
	advise();
	ck_assert_int_eq(told_way((struct leg){ { 22, 5 }, { 22, 13 } }), 0);
}
END_TEST

/* Whether a leg can be moved with an urn on just that cell. */
static bool can_move_by(struct leg leg, int right, int down, struct place urn)
{
	struct plot plot = { details_copy(&garden.plot.details), ground_copy(&garden.plot.ground) };
	bool can;

	*ground_at(&plot.ground, urn.x, urn.y) = 'S';
	can = proposal_apply(&plot, &(struct proposal){ .kind = PROPOSE_FENCE, .leg = leg,
		.right = right, .down = down });
	plot_fini(&plot);
	return can;
}

/* The cells between where a leg is and where it goes, those at its ends and no others. */
START_TEST(a_leg_goes_over_the_cells_between_and_no_others)
{
	const struct leg right = { { 22, 5 }, { 22, 13 } }, bottom = { { 5, 13 }, { 22, 13 } };
	static const struct {
		bool is_right; /* which leg */
		int off;       /* to the right, or down */
		struct rectangle over;
	} moves[] = {
		{ true, 2, { 22, 5, 23, 12 } }, { true, -2, { 20, 5, 21, 12 } },
		{ false, 2, { 5, 13, 21, 14 } }, { false, -2, { 5, 11, 21, 12 } },
	};

	fence_about(17, 8, "off");
	details_add_entry(&garden.plot.details, CLASS_FIXTURE, 'S', memory_string("Urn"));
	for (int i = 0; i < 4; i++)
		for (int y = 0; y < garden.plot.ground.rows; y++)
			for (int x = 0; x < garden.plot.ground.columns; x++)
				ck_assert_msg(can_move_by(moves[i].is_right ? right : bottom,
					moves[i].is_right ? moves[i].off : 0,
					moves[i].is_right ? 0 : moves[i].off,
					(struct place){ x, y }) != is_in(moves[i].over, x, y),
					"%d: %d, %d", i, x, y);
}
END_TEST

/* ---- How many, and how long ------------------------------------------------------------------ */

/* Five letters of beds, each a row lower than the one before; all would do with a course less. */
START_TEST(of_a_kind_those_that_spare_most_are_told)
{
	garden_rows(&garden, ROWS { "aaaaaaaa.bbbbbbbb.cccccccc.dddddddd.eeeeeeee",
		"aaaaaaaa.bbbbbbbb.cccccccc.dddddddd.eeeeeeee",
		"aaaaaaaa.bbbbbbbb.cccccccc.dddddddd.eeeeeeee",
		"aaaaaaaa.bbbbbbbb.cccccccc.dddddddd.eeeeeeee",
		".........bbbbbbbb.cccccccc.dddddddd.eeeeeeee",
		".........bbbbbbbb.cccccccc.dddddddd.eeeeeeee",
		"..................cccccccc.dddddddd.eeeeeeee",
		"..................cccccccc.dddddddd.eeeeeeee",
		"...........................dddddddd.eeeeeeee",
		"...........................dddddddd.eeeeeeee",
		"....................................eeeeeeee",
		"....................................eeeeeeee", NULL });
	for (const char *letter = "abcde"; *letter; letter++)
		plot_set(&garden.plot, *letter, BED_COURSES, "4");
	advise();
	ck_assert_int_eq(told_count(PROPOSE_COURSES), ADVICE_OF_KIND_MOST);
	for (int i = 0; i < ADVICE_OF_KIND_MOST; i++)
		ck_assert_int_eq(told(PROPOSE_COURSES, i).letter, 'e' - i);
	ck_assert(advice.is_all);
}
END_TEST

/* A fence in stairs of more legs than are tried, and a bed with cuts. */
START_TEST(what_cannot_all_be_tried_takes_nothing_from_the_rest)
{
	garden_rows(&garden, ROWS { "b.S", NULL });
	ground_fini(&garden.plot.ground);
	ground_init(&garden.plot.ground, 120, 60);
	for (int i = 0; i < 45; i++) {
		char run[64];

		snprintf(run, sizeof run, "%d,%d %d,%d %d,%d", 2 * i, i, 2 * i + 1, i, 2 * i + 1,
			i + 1);
		fences_run(&garden.plot, run);
		snprintf(run, sizeof run, "%d,%d %d,%d", 2 * i + 1, i + 1, 2 * i + 2, i + 1);
		fences_run(&garden.plot, run);
	}
	lay_rectangle(&garden.plot, (struct rectangle){ 100, 50, 104, 53 }, 'b');
	advise();
	ck_assert(!advice.is_all);
	ck_assert_int_gt(told_count(PROPOSE_SIZE), 0);
}
END_TEST

START_TEST(a_plan_too_large_for_it_gets_none)
{
	struct arena arena = ARENA_EMPTY;
	struct takeoff takeoff;

	shape_long_beds(&garden.plot, 1200);
	ck_assert(takeoff_compute(&takeoff, &arena, &garden.plot, NULL));
	advice_make(&advice, &garden.plot, &takeoff);
	ck_assert(!advice.is_tried);
	ck_assert_int_eq(advice.count, 0);
	arena_clear(&arena);
	plot_fini(&garden.plot);
	shape_long_beds(&garden.plot, 600);
	ck_assert(takeoff_compute(&takeoff, &arena, &garden.plot, NULL));
	advice_make(&advice, &garden.plot, &takeoff);
	ck_assert(advice.is_tried);
	ck_assert(!advice.is_all);
	ck_assert_int_gt(advice.count, 0);
	arena_clear(&arena);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("advice");
	TCase *claims = suite_case(suite, "claims"), *sizes = suite_case(suite, "sizes");
	TCase *one = suite_case(suite, "kinds");

	tcase_add_checked_fixture(claims, NULL, teardown);
	tcase_add_test(claims, each_claim_on_random_gardens_is_that_of_the_changed_plot);
	tcase_add_test(claims, mirrored_gardens_stay_mirrored);
	tcase_add_checked_fixture(sizes, NULL, teardown);
	tcase_add_test(sizes, the_nearest_sizes_that_would_do_are_told_and_no_others);
	tcase_add_checked_fixture(one, NULL, teardown);
	tcase_add_test(one, a_course_less_is_told_as_long_as_the_soil_is_deep_enough);
	tcase_add_test(one, a_size_that_spares_the_only_cut_is_told);
	tcase_add_test(one, another_block_is_told_where_it_is_as_high_and_costs_less);
	tcase_add_test(one, no_money_is_told_where_something_that_differs_has_no_price);
	tcase_add_test(one, beds_wall_to_wall_and_built_alike_could_be_one);
	tcase_add_test(one, no_change_is_told_by_which_more_beds_are_built);
	tcase_add_test(one, beds_are_not_joined_to_more_than_is_said);
	tcase_add_test(one, a_leg_that_a_run_ends_at_stays);
	tcase_add_test(one, a_leg_ends_amid_no_other);
	tcase_add_test(one, a_leg_is_not_moved_across_another);
	tcase_add_test(one, a_gate_goes_with_its_leg);
	tcase_add_test(one, a_leg_stops_at_a_gate_at_the_next_one_and_at_the_edge);
	tcase_add_test(one, images_are_joined_together);
	tcase_add_test(one, beds_are_not_joined_where_the_mirror_is_broken);
	tcase_add_test(one, a_bed_grows_over_no_fixture_and_gives_none_ground);
	tcase_add_test(one, only_what_the_bed_gives_up_or_takes_is_other_ground);
	tcase_add_test(one, a_bed_grows_till_it_would_meet_another_of_its_letter);
	tcase_add_test(one, a_bed_on_the_axis_is_changed_at_both_sides);
	tcase_add_test(one, a_leg_is_moved_the_shortest_way_to_the_fewest_panels_to_saw);
	tcase_add_test(one, a_leg_of_a_mirrored_fence_is_moved_with_its_image);
	tcase_add_test(one, no_change_is_told_by_which_a_plant_lacks_sun);
	tcase_add_test(one, a_leg_goes_off_as_far_as_it_is_from_the_axis);
	tcase_add_test(one, a_fence_is_moved_over_no_bed_and_no_fixture);
	tcase_add_test(one, a_leg_goes_over_the_cells_between_and_no_others);
	tcase_add_test(one, of_a_kind_those_that_spare_most_are_told);
	tcase_add_test(one, what_cannot_all_be_tried_takes_nothing_from_the_rest);
	tcase_add_test(one, a_plan_too_large_for_it_gets_none);
	return suite;
}
