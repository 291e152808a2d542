#include "takeoff/advice/attempt.h"
#include "base/stop.h"
#include "plot/edit/fence_lay.h"
#include "takeoff/sun/plant_sun.h"
#include "takeoff/sun/sun_usual.h"

#include <string.h>

/* What a takeoff takes, in microseconds of a common machine: so much at least; for so many cells
 * one; for each region; for each side of a cell that has a fence. Hours of sun: for so many cells
 * one; for each thing that casts shade. A part of a takeoff goes with the change, whether it can be
 * made or not. All attempts together take half a second at most, and where that is not enough for a
 * few there are none. */
enum {
	WORK_LEAST = 400, CELLS_TO_WORK = 25, WORK_OF_REGION = 1, WORK_OF_SIDE = 4,
	SUN_CELLS_TO_WORK = 10, SUN_WORK_OF_BOX = 8,
	WORK_MOST = 500000, ATTEMPTS_LEAST = 20, CHANGES_TO_WORK = 4
};

static void count_snags(int64_t counts[SNAG_CODES], const struct snag_list *snags)
{
	memset(counts, 0, SNAG_CODES * sizeof *counts);
	for (size_t i = 0; i < snags->count && !stop_asked(); i++)
		counts[snags->list[i].code]++;
}

static int64_t work_of(const struct plot *plot, const struct takeoff *takeoff)
{
	int64_t work = WORK_LEAST + (int64_t)ground_count(&plot->ground) / CELLS_TO_WORK +
		(int64_t)WORK_OF_REGION * takeoff->survey.region_count;

	for (size_t i = 0; i < plot->details.fence_count; i++)
		work += WORK_OF_SIDE * fence_length(&plot->details.fences[i]);
	return work;
}

bool attempts_begin(struct attempts *out, struct arena *arena, const struct plot *plot,
	const struct takeoff *takeoff)
{
	*out = (struct attempts){ .arena = arena, .plot = plot, .takeoff = takeoff,
		.work_each = work_of(plot, takeoff), .work_left = WORK_MOST };
	count_snags(out->snags, &takeoff->snags);
	return out->work_each * ATTEMPTS_LEAST <= WORK_MOST;
}

/* ---- Whether it would do --------------------------------------------------------------------- */

static bool has_new_snags(const struct attempts *attempts, const struct takeoff *changed)
{
	int64_t snags[SNAG_CODES];
	bool has_new = false;

	count_snags(snags, &changed->snags);
	for (int i = 0; i < SNAG_CODES; i++)
		has_new = has_new || snags[i] > attempts->snags[i];
	return has_new;
}

static bool keeps_soil(const struct proposal *proposal, const struct takeoff *changed)
{
	nm least = block_length(changed->allow, ALLOW_SOIL_LEAST);

	for (int i = 0; i < changed->fills.count; i++) {
		const struct fill *fill = &changed->fills.list[i];

		if (changed->survey.regions[fill->region].entry->letter == proposal->letter &&
			fill->soil_depth < least)
			return false;
	}
	return true;
}

static int raised_beds(const struct takeoff *takeoff)
{
	return takeoff->walls.count + takeoff->walls.not_laid_count;
}

/* As many beds are laid out, and only those that are joined are fewer. */
static bool keeps_beds(const struct proposal *proposal, const struct takeoff *before,
	const struct takeoff *after)
{
	int joined = proposal->kind == PROPOSE_JOINED ? proposal->region_count / 2 : 0;

	return before->walls.not_laid_count == after->walls.not_laid_count &&
		before->walls.caps_not_laid == after->walls.caps_not_laid &&
		raised_beds(before) - joined == raised_beds(after);
}

static bool spares(enum proposal_kind kind, const struct difference *difference)
{
	switch (kind) {
	case PROPOSE_SIZE:
		return difference->cuts < 0;
	case PROPOSE_COURSES:
	case PROPOSE_JOINED:
		return difference->blocks < 0;
	case PROPOSE_BLOCK:
		return difference->cost < 0 || difference->cuts < 0;
	case PROPOSE_FENCE:
		return difference->panel_pieces < 0;
	}
	return false;
}

static bool is_good(const struct attempts *attempts, struct proposal *proposal,
	const struct takeoff *changed)
{
	const struct takeoff *before = attempts->takeoff;

	proposal->difference = difference_of(before, changed);
	return spares(proposal->kind, &proposal->difference) &&
		keeps_beds(proposal, before, changed) &&
		(proposal->kind != PROPOSE_COURSES || keeps_soil(proposal, changed)) &&
		!has_new_snags(attempts, changed);
}

static int64_t work_of_sun(const struct takeoff *takeoff)
{
	const struct sun_usual *sun = takeoff->sun;

	return sun ? (int64_t)(sun->cells / SUN_CELLS_TO_WORK + sun->boxes * SUN_WORK_OF_BOX) : 0;
}

/* Whether plants lack no more sun. That takes longest to count, so it is asked last. */
static bool keeps_sun(struct attempts *attempts, struct takeoff *changed, struct arena *arena)
{
	bool good;

	if (attempts->work_left < work_of_sun(attempts->takeoff)) {
		attempts->is_short = true;
		return false;
	}
	good = takeoff_add_sun(changed, arena) && !has_new_snags(attempts, changed);
	attempts->work_left -= work_of_sun(changed);
	return good;
}

static bool count(struct attempts *attempts, struct proposal *proposal, const struct plot *plot)
{
	struct arena arena = ARENA_EMPTY;
	struct takeoff changed;
	bool good = takeoff_compute(&changed, &arena, plot, attempts->takeoff->book) &&
		is_good(attempts, proposal, &changed) && keeps_sun(attempts, &changed, &arena);

	arena_clear(&arena);
	return good && !stop_asked();
}

bool attempts_go_on(struct attempts *attempts)
{
	bool has_work = attempts->work_left >= attempts->work_each;

	attempts->is_short = attempts->is_short || !has_work;
	return has_work && !stop_asked();
}

bool attempt(struct attempts *attempts, struct proposal *proposal)
{
	int64_t work = attempts->work_each, of_change = work / CHANGES_TO_WORK;
	struct plot plot;
	bool can, good;

	if (!attempts_go_on(attempts))
		return false;
	plot = (struct plot){ details_copy(&attempts->plot->details),
		ground_copy(&attempts->plot->ground) };
	names_fini(&plot.details.names);
	can = proposal_apply(&plot, proposal);
	attempts->work_left -= can ? work : of_change;
	good = can && count(attempts, proposal, &plot);
	plot_fini(&plot);
	return good;
}

void attempts_keep(struct attempts *attempts, const struct proposal *proposal)
{
	attempts->kept = arena_grow(attempts->arena, attempts->kept, attempts->count,
		&attempts->capacity, sizeof *attempts->kept);
	attempts->kept[attempts->count++] = *proposal;
}
