#include "takeoff/walks/barrow_ways.h"
#include "base/number.h"
#include "base/stop.h"
#include "survey/cover.h"
#include "survey/way.h"
#include "survey/way_lengths.h"

#include <stdlib.h>

/* Lengths in cells, and how many were added up. */
struct sum {
	int64_t length, count;
};

struct finding {
	const struct basis *basis;
	const struct fence_map *fences;
	struct way_lengths lengths;
	struct sum *sums; /* by region */
};

static void add(struct sum *sum, int length)
{
	sum->length += length;
	sum->count += length > 0;
}

static nm average(const struct basis *basis, const struct sum *sum)
{
	return sum->count == 0 ? 0 : (nm)((nm2)sum->length * basis->survey->cell / sum->count);
}

/* ---- Regions --------------------------------------------------------------------------------- */

/* `at`: the cell at whose right or lower side it is, as fence_map.h has it. */
static void add_from(const struct finding *finding, int region, int x, int y, struct place at,
	bool is_below)
{
	int length = way_length_at(&finding->lengths, x, y);

	if (length > 0 && !fence_map_is_shut(finding->fences, at, is_below))
		add(&finding->sums[region], length);
}

static void add_sides(const struct finding *finding, int region, int x, int y)
{
	add_from(finding, region, x - 1, y, (struct place){ x - 1, y }, false);
	add_from(finding, region, x + 1, y, (struct place){ x, y }, false);
	add_from(finding, region, x, y - 1, (struct place){ x, y - 1 }, true);
	add_from(finding, region, x, y + 1, (struct place){ x, y }, true);
}

static void add_run(const struct finding *finding, const struct run *run, int y)
{
	for (int x = run->left; x < run->right; x++)
		if (way_is_over(run->class))
			add(&finding->sums[run->region], way_length_at(&finding->lengths, x, y));
		else
			add_sides(finding, run->region, x, y);
}

static void add_regions(const struct finding *finding)
{
	const struct survey *survey = finding->basis->survey;

	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++)
			if (survey->runs[i].class != CLASS_OPEN)
				add_run(finding, &survey->runs[i], y);
}

/* ---- Fences ---------------------------------------------------------------------------------- */

/* Of two lengths the lesser that is one. */
static int nearer(int one, int other)
{
	return one == 0 ? other : other == 0 ? one : least(one, other);
}

static void add_leg(const struct finding *finding, struct leg leg, struct sum *sum)
{
	bool is_upright = leg_is_upright(leg);
	struct leg f = leg_forward(leg);

	for (struct place at = f.from; !place_equal(at, f.to) && !stop_asked();
		at = (struct place){ at.x + !is_upright, at.y + is_upright })
		add(sum, nearer(way_length_at(&finding->lengths, at.x, at.y),
			way_length_at(&finding->lengths, at.x - is_upright, at.y - !is_upright)));
}

static struct sum sum_of_fence(const struct finding *finding, const struct fence *fence)
{
	struct legs legs = LEGS_EMPTY;
	struct sum sum = { 0, 0 };

	fence_legs(fence, &legs);
	for (size_t i = 0; i < legs.count; i++)
		add_leg(finding, legs.items[i], &sum);
	legs_fini(&legs);
	return sum;
}

/* ---- Ways ------------------------------------------------------------------------------------ */

static void list_regions(struct barrow_ways *out, const struct finding *finding)
{
	const struct basis *basis = finding->basis;
	int regions = basis->survey->region_count;
	struct barrow_way *list = arena_new(basis->arena, (size_t)regions, sizeof *list);
	nm *by_region = arena_new(basis->arena, (size_t)regions + 1, sizeof *by_region);

	out->list = list;
	out->regions = by_region;
	for (int i = 0; i < regions && !stop_asked(); i++) {
		by_region[i] = average(basis, &finding->sums[i]);
		if (by_region[i] > 0)
			list[out->count++] = (struct barrow_way){ i, by_region[i] };
	}
}

static void list_fences(struct barrow_ways *out, const struct finding *finding)
{
	const struct basis *basis = finding->basis;
	const struct details *details = &basis->plot->details;
	struct barrow_fence *list = arena_new(basis->arena, details->fence_count, sizeof *list);
	struct sum all = { 0, 0 };

	out->fence_list = list;
	for (size_t i = 0; i < details->fence_count && !stop_asked(); i++) {
		struct sum sum = sum_of_fence(finding, &details->fences[i]);

		all.length += sum.length;
		all.count += sum.count;
		if (sum.count > 0)
			list[out->fence_count++] = (struct barrow_fence){
				details->fences[i].name, average(basis, &sum) };
	}
	out->fences = average(basis, &all);
}

/* ---- Cut off --------------------------------------------------------------------------------- */

/* A byte a region: somebody gets to a part of the path from outside the plan. The caller frees. */
static unsigned char *paths_reached(const struct survey *survey, const unsigned char *way)
{
	unsigned char *reached = memory_new((size_t)survey->region_count, sizeof *reached);

	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];

			for (int x = run->left; run->class == CLASS_PATH && x < run->right; x++)
				reached[run->region] |=
					way[(size_t)y * (size_t)survey->columns + (size_t)x];
		}
	return reached;
}

static void tell_regions(const struct basis *basis, const unsigned char *way,
	const struct barrow_ways *ways)
{
	unsigned char *reached = paths_reached(basis->survey, way);

	for (int i = 0; i < basis->survey->region_count && !stop_asked(); i++) {
		enum plot_class class = basis->survey->regions[i].entry->class;

		if (ways->regions[i] == 0 && class != CLASS_FIXTURE &&
			(class != CLASS_PATH || reached[i]))
			snag_add(basis->snags, SNAG_DROP_CUT_OFF, i, SNAG_FIGURES_OF(0))->kind =
				DROP_REGION;
	}
	free(reached);
}

static void tell(const struct basis *basis, const unsigned char *way,
	const struct barrow_ways *ways)
{
	struct snag *snag;

	if (ways->count + ways->fence_count > 0) {
		tell_regions(basis, way, ways);
	} else if (basis->survey->region_count > 0) {
		snag = snag_add(basis->snags, SNAG_DROP_CUT_OFF, NO_REGION, SNAG_FIGURES_OF(0));
		snag->kind = DROP_WHOLLY;
		snag_put(snag, ground_nearest(&basis->plot->ground,
			basis->plot->details.around.drop));
	}
}

/* ---- The whole ------------------------------------------------------------------------------- */

void barrow_ways_find(struct barrow_ways *out, const struct basis *basis,
	const struct walking *walking)
{
	const struct surroundings *around = &basis->plot->details.around;
	struct arena arena = ARENA_EMPTY;
	struct finding finding;

	*out = (struct barrow_ways){ .list = NULL };
	if (!around->has_drop)
		return;
	finding = (struct finding){ basis, walking->fences, way_lengths_from(basis->survey,
		walking->fences, walking->houses, around->drop, &arena),
		memory_new((size_t)basis->survey->region_count, sizeof *finding.sums) };
	add_regions(&finding);
	list_regions(out, &finding);
	list_fences(out, &finding);
	tell(basis, walking->way, out);
	free(finding.sums);
	arena_clear(&arena);
}

static const struct figure way_figures[] = {
	{ "region", NULL, NULL, FIELD(REGION, barrow_way, region), .flags = ROW_KEY },
	{ "length_m", NULL, "Barrow, each way", FIELD(LENGTH, barrow_way, length) },
};
const struct figure_table barrow_way_table = FIGURE_TABLE(barrow_way, way_figures);

static const struct figure fence_figures[] = {
	{ "fence", NULL, NULL, FIELD(TEXT, barrow_fence, name), .flags = ROW_KEY },
	{ "length_m", NULL, "Barrow, each way", FIELD(LENGTH, barrow_fence, length) },
};
const struct figure_table barrow_fence_table = FIGURE_TABLE(barrow_fence, fence_figures);
