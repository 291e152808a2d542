#include "takeoff/walls/ring.h"
#include "base/number.h"
#include "base/stop.h"
#include "takeoff/walls/ring_corners.h"

#include <assert.h>
#include <stdlib.h>

/* A ring while it is laid. */
struct laying {
	struct ring_corners corners;
	const struct ring_plan *plan;
	struct wall_run *odd, *even; /* by run; even: NULL where there is one course */
	struct ring_fault *faults;   /* by run; most are none */
	bool *is_laid;               /* by run */
	struct ring *ring;
};

/* ---- Runs and their images ------------------------------------------------------------------- */

/* Adds a run to what its course is made of. */
static void count_run(struct wall_course *course, const struct wall_run *run, int64_t cut)
{
	course->run_count++;
	course->cut += cut;
	course->whole += run->piece_count - cut;
	course->length += run->length;
}

static const nm *reversed(struct arena *arena, const nm *pieces, int count)
{
	nm *back = arena_new(arena, (size_t)count, sizeof *back);

	for (int i = 0; i < count; i++)
		back[i] = pieces[count - 1 - i];
	return back;
}

/* The run as it lies where the image has it; length: of its side. */
static struct wall_run run_image(struct arena *arena, const struct wall_run *run,
	const struct image *image, const struct loop *loop, nm length)
{
	struct wall_run other = *run;

	other.side = image_side(image, run->loop, run->side, loop->count);
	other.loop = image->loops[run->loop].loop;
	if (turn_is_flip(image->turn)) {
		other.from = length - run->from - run->length;
		other.pieces = reversed(arena, run->pieces, run->piece_count);
	}
	return other;
}

/* ---- Laying ---------------------------------------------------------------------------------- */

static struct wall_run run_of(struct side_place place, const struct bond_run *run, int butts,
	const struct bond_course *course)
{
	return (struct wall_run){ place.loop, place.side, run->from, run->length, course->pieces,
		course->count, butts };
}

/* The shorter of `least` and the pieces that show their heads. */
static nm least_head(const struct bond_run *run, const struct bond_course *course, nm least)
{
	if (!run->first_open)
		least = nm_least(least, course->pieces[0]);
	return run->last_open ? least : nm_least(least, course->pieces[course->count - 1]);
}

/* The side's runs by its own bond, which is returned. */
static const struct bond *lay_side(struct laying *laying, int at, struct side_place place)
{
	const struct ring_corners *corners = &laying->corners;
	const struct masonry *masonry = &laying->plan->masonry;
	struct side side = ring_side(corners, place);
	const struct bond *bond = ring_bond(corners, place, &side, true);
	struct bond_run odd = side_run(&side, masonry->depth, false);
	struct bond_run even = side_run(&side, masonry->depth, true);
	int butts = !side.first_through + !side.last_through;
	nm corner = least_head(&odd, &bond->odd, masonry->length);

	laying->odd[at] = run_of(place, &odd, butts, &bond->odd);
	if (laying->even) {
		laying->even[at] = run_of(place, &even, 2 - butts, &bond->even);
		corner = least_head(&even, &bond->even, corner);
	}
	laying->faults[at] = (struct ring_fault){ place,
		!bond->holds || !ring_is_swapped(corners, place), bond->corners_hold ? 0 : corner };
	return bond;
}

static void count_side(struct laying *laying, int at, struct side_place place,
	const struct bond *bond)
{
	count_run(&laying->ring->odd, &laying->odd[at], bond->odd.cut);
	if (laying->even)
		count_run(&laying->ring->even, &laying->even[at], bond->even.cut);
	laying->ring->cost += ring_side_cost(&laying->corners, place, bond);
	laying->is_laid[at] = true;
}

/* The same on a side that is its image. */
static void lay_image(struct laying *laying, int at, const struct image *image,
	const struct bond *bond)
{
	const struct ring_plan *plan = laying->plan;
	const struct wall_run *run = &laying->odd[at];
	const struct loop *loop = &plan->outline->loops[run->loop];
	nm length = outline_side(loop, run->side) * plan->cell;
	struct side_place there = { image->loops[run->loop].loop,
		image_side(image, run->loop, run->side, loop->count) };
	int other = laying->corners.first_runs[there.loop] + there.side;

	if (laying->is_laid[other])
		return;
	laying->odd[other] = run_image(plan->arena, run, image, loop, length);
	if (laying->even)
		laying->even[other] = run_image(plan->arena, &laying->even[at], image, loop,
			length);
	laying->faults[other] = laying->faults[at];
	laying->faults[other].place = there;
	count_side(laying, other, there, bond);
}

static void lay_sides(struct laying *laying)
{
	const struct outline *outline = laying->plan->outline;
	const struct symmetry *symmetry = laying->plan->symmetry;

	for (int loop = 0; loop < outline->count; loop++) {
		int sides = outline->loops[loop].count;

		for (int i = 0; i < sides && !stop_asked(); i++) {
			struct side_place place = { loop,
				(laying->corners.first_sides[loop] + i) % sides };
			int at = laying->corners.first_runs[loop] + place.side;
			const struct bond *bond;

			if (laying->is_laid[at])
				continue;
			bond = lay_side(laying, at, place);
			count_side(laying, at, place, bond);
			for (int j = 0; symmetry && j < symmetry->count; j++)
				lay_image(laying, at, &symmetry->images[j], bond);
		}
	}
}

/* Moves what faults there are into the ring. */
static void keep_faults(struct ring *ring, struct arena *arena, const struct ring_fault *faults,
	int runs)
{
	struct ring_fault *kept = NULL;
	size_t capacity = 0;

	for (int i = 0; i < runs; i++) {
		if (!faults[i].is_unbonded && faults[i].corner == 0)
			continue;
		kept = arena_grow(arena, kept, (size_t)ring->fault_count, &capacity, sizeof *kept);
		kept[ring->fault_count++] = faults[i];
	}
	ring->faults = kept;
}

bool ring_lay(struct ring *out, const struct ring_plan *plan)
{
	struct laying laying = { .plan = plan, .ring = out };
	int runs;

	*out = (struct ring){ .cost = 0 };
	if (!ring_choose(&laying.corners, plan))
		return false;
	runs = laying.corners.first_runs[plan->outline->count];
	laying.odd = arena_new(plan->arena, (size_t)runs, sizeof *laying.odd);
	if (plan->masonry.courses > 1)
		laying.even = arena_new(plan->arena, (size_t)runs, sizeof *laying.even);
	laying.faults = memory_new((size_t)runs, sizeof *laying.faults);
	laying.is_laid = memory_new((size_t)runs, sizeof *laying.is_laid);
	lay_sides(&laying);
	keep_faults(out, plan->arena, laying.faults, runs);
	free(laying.is_laid);
	free(laying.faults);
	out->odd.runs = laying.odd;
	out->even.runs = laying.even;
	out->through = laying.corners.through;
	return true;
}

/* ---- On another outline ---------------------------------------------------------------------- */

/* first_runs: of the loops on which the ring comes to lie. */
static void course_image(struct wall_course *course, const struct ring_plan *plan,
	const struct outline *from, const struct image *image, const int *first_runs)
{
	const struct wall_run *runs = course->runs;
	struct wall_run *images = arena_new(plan->arena, (size_t)course->run_count,
		sizeof *images);

	for (int i = 0; i < course->run_count && !stop_asked(); i++) {
		const struct loop *loop = &from->loops[runs[i].loop];
		struct wall_run run = run_image(plan->arena, &runs[i], image, loop,
			outline_side(loop, runs[i].side) * plan->cell);

		images[first_runs[run.loop] + run.side] = run;
	}
	course->runs = course->run_count > 0 ? images : NULL;
}

void ring_image(struct ring *out, const struct ring_plan *plan, const struct ring *ring,
	const struct outline *from, const struct image *image)
{
	const int *first_runs = ring_first_runs(plan->arena, plan->outline);
	struct ring_fault *faults = arena_new(plan->arena, (size_t)ring->fault_count,
		sizeof *faults);

	*out = *ring;
	course_image(&out->odd, plan, from, image, first_runs);
	course_image(&out->even, plan, from, image, first_runs);
	for (int i = 0; i < ring->fault_count; i++) {
		struct side_place place = ring->faults[i].place;

		faults[i] = ring->faults[i];
		faults[i].place = (struct side_place){ image->loops[place.loop].loop,
			image_side(image, place.loop, place.side, from->loops[place.loop].count) };
	}
	out->faults = faults;
	out->through = NULL;
}

static const struct figure run_figures[] = {
	{ "loop", NULL, NULL, FIELD(COUNT, wall_run, loop) },
	{ "side", NULL, NULL, FIELD(COUNT, wall_run, side) },
	{ "from_m", NULL, NULL, FIELD(LENGTH, wall_run, from) },
	{ "length_m", NULL, NULL, FIELD(LENGTH, wall_run, length) },
	{ "pieces_m", NULL, NULL, FIELDS(LENGTHS, wall_run, pieces, piece_count) },
};
static const struct figure_table run_table = FIGURE_TABLE(wall_run, run_figures);

static const struct figure course_figures[] = {
	{ "runs", NULL, NULL, FIELDS(ROWS, wall_course, runs, run_count), .table = &run_table,
		.flags = JSON_SPACED },
};
const struct figure_table wall_course_table = FIGURE_TABLE(wall_course, course_figures);
