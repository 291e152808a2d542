#include "takeoff/ground/falls.h"
#include "base/number.h"
#include "base/stop.h"

#include <math.h>
#include <stdlib.h>

static const int64_t NEAR = MILLION / 1000; /* a thousandth of a percent */

static double percent_of(int64_t millionths)
{
	return (double)millionths / (double)MILLION;
}

static nm middle(const struct surface *surface, int cell)
{
	return cell * surface->cell + surface->cell / 2;
}

/* ---- Paths ----------------------------------------------------------------------------------- */

static nm drop_at(const struct surface *surface, int x, int y)
{
	return surface_finished(surface, middle(surface, x), middle(surface, y));
}

/* Millionths of a percent, whichever way it falls. */
static int64_t fall_between(const struct surface *surface, nm one, nm other)
{
	return llround(fabs((double)(one - other)) / (double)surface->cell * 100 * (double)MILLION);
}

static void take_run(int64_t *steepest, const struct survey *survey,
	const struct surface *surface, const struct run *run, int y)
{
	for (int x = run->left; x < run->right && !stop_asked(); x++) {
		nm drop = drop_at(surface, x, y);

		if (x + 1 < run->right)
			*steepest = nm_most(*steepest, fall_between(surface, drop,
				drop_at(surface, x + 1, y)));
		if (y + 1 < survey->rows && survey_region_at(survey, x, y + 1) == run->region)
			*steepest = nm_most(*steepest, fall_between(surface, drop,
				drop_at(surface, x, y + 1)));
	}
}

static void find_paths(struct falls *out, const struct basis *basis, const struct surface *surface)
{
	const struct survey *survey = basis->survey;
	size_t regions = (size_t)survey->region_count;
	int64_t *steepest = memory_new(regions, sizeof *steepest);
	struct path_fall *list = arena_new(basis->arena, regions, sizeof *list);

	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++)
			if (survey->runs[i].class == CLASS_PATH)
				take_run(&steepest[survey->runs[i].region], survey, surface,
					&survey->runs[i], y);
	for (int i = 0; i < survey->region_count && !stop_asked(); i++)
		if (survey->regions[i].entry->class == CLASS_PATH)
			list[out->path_count++] =
				(struct path_fall){ i, percent_of(steepest[i]) };
	out->paths = list;
	free(steepest);
}

/* ---- Houses ---------------------------------------------------------------------------------- */

/* What was found of the ground of a region that is near a house. */
struct near_house {
	bool is_any, is_faulty;
	int64_t fall;       /* the least */
	struct place first; /* where it is too little */
};

struct watch {
	const struct basis *basis;
	const struct surface *surface;
	nm near;
	struct near_house *found; /* by region, the last: of open ground */
};

/* The least fall away from a house. */
static int64_t least_of(const struct basis *basis, bool is_path)
{
	return block_number(basis->allow, is_path ? ALLOW_FALL_PATH : ALLOW_FALL_GROUND);
}

/* Walls hold the ground of raised beds level, and water runs round fixtures. */
static bool is_watched(const struct survey *survey, const struct run *run)
{
	return run->class != CLASS_FIXTURE && (run->class != CLASS_BED ||
		!region_is_raised(&survey->regions[run->region]));
}

/* Ground within a house has no fall away from it. */
static void watch_cell(const struct watch *watch, struct near_house *found, int64_t asked,
	struct place cell)
{
	nm right = middle(watch->surface, cell.x), down = middle(watch->surface, cell.y);
	struct from_house from;
	int64_t fall;

	surface_from_house(watch->surface, right, down, &from);
	if (from.distance == 0 || from.distance > watch->near)
		return;
	fall = surface_fall(watch->surface, right, down, from.right, from.down);
	found->fall = found->is_any ? nm_least(found->fall, fall) : fall;
	found->is_any = true;
	if (found->is_faulty || fall + NEAR >= asked)
		return;
	found->is_faulty = true;
	found->first = cell;
}

static void watch_run(const struct watch *watch, const struct run *run, int y)
{
	int64_t asked = least_of(watch->basis, run->class == CLASS_PATH);
	struct near_house *found = &watch->found[run->region == NO_REGION ?
		watch->basis->survey->region_count : run->region];

	for (int x = run->left; x < run->right && !stop_asked(); x++)
		watch_cell(watch, found, asked, (struct place){ x, y });
}

static void tell(const struct watch *watch, int region, const struct near_house *found)
{
	int64_t asked = least_of(watch->basis, region != NO_REGION &&
		watch->basis->survey->regions[region].entry->class == CLASS_PATH);
	bool is_towards = found->fall + NEAR < 0;
	struct snag *snag = snag_add(watch->basis->snags, SNAG_FALL_HOUSE, region,
		SNAG_FIGURES_OF(is_towards ? -found->fall : nm_most(0, found->fall), asked,
		watch->near));

	snag->kind = is_towards ? FALL_TOWARDS : FALL_LITTLE;
	snag_put(snag, found->first);
}

static void watch_houses(struct falls *out, const struct basis *basis,
	const struct surface *surface)
{
	const struct survey *survey = basis->survey;
	size_t count = (size_t)survey->region_count + 1;
	const struct watch watch = { basis, surface, block_length(basis->allow, ALLOW_FALL_NEAR),
		memory_new(count, sizeof(struct near_house)) };
	struct house_fall *list = arena_new(basis->arena, count, sizeof *list);

	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++)
			if (is_watched(survey, &survey->runs[i]))
				watch_run(&watch, &survey->runs[i], y);
	for (int i = 0; i <= survey->region_count && !stop_asked(); i++) {
		const struct near_house *found = &watch.found[i];
		int region = i < survey->region_count ? i : NO_REGION;

		if (found->is_any)
			list[out->house_count++] =
				(struct house_fall){ region, percent_of(found->fall) };
		if (found->is_faulty)
			tell(&watch, region, found);
	}
	out->houses = list;
	free(watch.found);
}

void falls_compute(struct falls *out, const struct basis *basis, const struct surface *surface)
{
	*out = (struct falls){ .path_count = 0 };
	if (!surface_is_told(surface))
		return;
	find_paths(out, basis, surface);
	if (surface->houses->count > 0)
		watch_houses(out, basis, surface);
}
