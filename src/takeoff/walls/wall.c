#include "takeoff/walls/wall.h"
#include "base/measure.h"
#include "base/stop.h"
#include "survey/shape.h"
#include "takeoff/walls/site.h"

#include <stdlib.h>

double wall_volume(nm length, const struct size *block)
{
	return area_of(length, block->across) * metres(block->up);
}

double wall_density(const struct block *bed)
{
	return block_amount(bed, BED_DENSITY);
}

static const struct size *bed_size(const struct block *bed, enum attribute a)
{
	return &block_effective(bed, a)->as.size;
}

static struct masonry masonry_of(const struct block *allow, const struct size *block,
	int64_t courses)
{
	nm shortest = block_length(allow, ALLOW_SHORTEST);

	return (struct masonry){ .length = block->along, .depth = block->across,
		.shortest = bond_shortest(block->along, shortest), .courses = (int)courses };
}

struct masonry wall_masonry(const struct block *allow, const struct block *bed)
{
	return masonry_of(allow, bed_size(bed, BED_BLOCK), block_number(bed, BED_COURSES));
}

/* The outline's length, less `less` for the outer loop and more by it for each hole. */
static nm outline_length(const struct site *site, nm less)
{
	const struct outline *outline = site->room.outline;
	nm length = 0;

	for (int i = 0; i < outline->count; i++)
		length += outline->loops[i].perimeter * site->room.survey->cell +
			(i == 0 ? -less : less);
	return length;
}

static void lay_cap(struct wall *wall, const struct site *site)
{
	const struct size *cap = bed_size(site->bed, BED_CAP);
	struct masonry masonry = masonry_of(site->job->basis->allow, cap, 1);
	struct ring ring;

	if (size_is_none(cap))
		return;
	if (!site_takes_cap(site, &masonry)) {
		site->job->walls->caps_not_laid++;
		return;
	}
	ring_lay(&ring, site->job->basis->arena, site->job->book, site->room.outline,
		site->room.survey->cell, &masonry);
	wall->has_cap = true;
	wall->cap_block = *cap;
	wall->cap = ring.odd;
}

/* The ring's area is its depth times the length of a course. A loop has four corners more that
 * turn one way than the other: for each the inner face is two depths shorter, round a hole
 * longer. */
static void measure_inside(struct wall *wall, const struct site *site)
{
	const struct survey *survey = site->room.survey;
	nm depth = wall->block.across;

	wall->inner_area = survey_area(survey->regions[wall->region].cells, survey->cell) -
		area_of(depth, outline_length(site, 4 * depth));
	wall->inner_perimeter = outline_length(site, 8 * depth);
}

static void count_up(struct wall *wall, int64_t beads)
{
	int64_t odd = (wall->courses + 1) / 2, even = wall->courses / 2;
	nm laid = odd * wall->odd.length + even * wall->even.length;
	double density = wall_density(wall->bed);

	wall->whole_blocks = odd * wall->odd.whole + even * wall->even.whole;
	wall->cut_pieces = odd * wall->odd.cut + even * wall->even.cut;
	wall->block_weight = density * wall_volume(wall->block.along, &wall->block);
	wall->weight = density * wall_volume(laid, &wall->block);
	/* Under every course but the first, and under the cap. */
	wall->bead = (double)beads * metres(laid - wall->odd.length + wall->cap.length);
}

static void lay_wall(struct wall *wall, const struct site *site, const struct masonry *masonry)
{
	struct ring ring;

	ring_lay(&ring, site->job->basis->arena, site->job->book, site->room.outline,
		site->room.survey->cell, masonry);
	*wall = (struct wall){
		.region = site->room.region,
		.bed = site->bed,
		.block = *bed_size(site->bed, BED_BLOCK),
		.courses = masonry->courses,
		.odd = ring.odd,
		.even = ring.even,
	};
	site_check_bond(site, &ring);
	site_check_inside(site, masonry->depth);
	lay_cap(wall, site);
	measure_inside(wall, site);
	count_up(wall, site->job->beads);
}

/* About as many blocks as the runs are long, at least one. */
static struct wall_not_laid not_laid(const struct site *site, const struct masonry *masonry)
{
	nm laid = masonry->courses * outline_length(site, 4 * masonry->depth);
	int64_t about = laid > 0 ? (laid + masonry->length - 1) / masonry->length : 1;

	return (struct wall_not_laid){ site->room.region, about };
}

/* The lists of walls while they grow: where every bed is one cell, few if any are laid. */
struct lists {
	struct arena *arena;
	struct wall *laid;
	size_t laid_capacity;
	struct wall_not_laid *not_laid;
	size_t not_laid_capacity;
};

static struct wall *add_laid(struct lists *lists, struct walls *walls)
{
	lists->laid = arena_grow(lists->arena, lists->laid, (size_t)walls->count,
		&lists->laid_capacity, sizeof *lists->laid);
	return &lists->laid[walls->count++];
}

static struct wall_not_laid *add_not_laid(struct lists *lists, struct walls *walls)
{
	lists->not_laid = arena_grow(lists->arena, lists->not_laid, (size_t)walls->not_laid_count,
		&lists->not_laid_capacity, sizeof *lists->not_laid);
	return &lists->not_laid[walls->not_laid_count++];
}

/* What came of a bed, for those that are like it. */
struct outcome {
	bool is_laid;
	int at; /* in the list of those that are, or are not */
	int caps_not_laid;
	size_t first_snag, snag_count;
};

/* Lays the bed's wall or, where it does not fit, says how many blocks it would take. */
static struct outcome wall_bed(struct lists *lists, const struct job *job, int region)
{
	const struct survey *survey = job->basis->survey;
	struct walls *walls = job->walls;
	struct arena outlines = ARENA_EMPTY;
	struct outline outline;
	struct site site = {
		.job = job,
		.room = { survey, region, &outline },
		.bed = &survey->regions[region].entry->block,
	};
	struct masonry masonry = wall_masonry(job->basis->allow, site.bed);
	struct outcome outcome = { .caps_not_laid = -walls->caps_not_laid,
		.first_snag = job->basis->snags->count };

	outline_trace(&outline, &outlines, job->basis->plot, survey, region);
	outcome.is_laid = site_takes_wall(&site, &masonry);
	outcome.at = outcome.is_laid ? walls->count : walls->not_laid_count;
	if (outcome.is_laid)
		lay_wall(add_laid(lists, walls), &site, &masonry);
	else
		*add_not_laid(lists, walls) = not_laid(&site, &masonry);
	arena_clear(&outlines);
	outcome.caps_not_laid += walls->caps_not_laid;
	outcome.snag_count = job->basis->snags->count - outcome.first_snag;
	return outcome;
}

/* The same for a bed like one that was seen to: its wall has the same runs. */
static void wall_again(struct lists *lists, const struct job *job, const struct outcome *outcome,
	int region)
{
	struct walls *walls = job->walls;

	if (outcome->is_laid) {
		struct wall *wall = add_laid(lists, walls);

		*wall = lists->laid[outcome->at];
		wall->region = region;
	} else {
		struct wall_not_laid *without = add_not_laid(lists, walls);

		*without = lists->not_laid[outcome->at];
		without->region = region;
	}
	walls->caps_not_laid += outcome->caps_not_laid;
	snags_repeat(job->basis->snags, outcome->first_snag, outcome->snag_count, region);
}

/* In their order, but each shape with its block once. */
static void wall_beds(struct lists *lists, const struct job *job, const int *beds,
	const struct groups *groups)
{
	struct outcome *outcomes = memory_new((size_t)groups->count, sizeof *outcomes);

	for (int i = 0; i < groups->item_count && !stop_asked(); i++) {
		int group = groups->of[i];

		if (groups->list[group].members[0] == i)
			outcomes[group] = wall_bed(lists, job, beds[i]);
		else
			wall_again(lists, job, &outcomes[group], beds[i]);
	}
	free(outcomes);
}

/* The caller frees. */
static int *raised_beds(const struct survey *survey, int *count)
{
	int *beds = NULL;
	size_t capacity = 0;

	*count = 0;
	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		if (!region_is_raised(&survey->regions[i]))
			continue;
		beds = memory_grow(beds, (size_t)*count, &capacity, sizeof *beds);
		beds[(*count)++] = i;
	}
	return beds;
}

void walls_lay(struct walls *out, const struct basis *basis)
{
	struct job job = {
		.basis = basis, .walls = out, .book = side_book_new(basis->arena),
		.inside = block_length(basis->allow, ALLOW_INSIDE),
		.beads = block_number(basis->allow, ALLOW_BEADS),
	};
	struct lists lists = { .arena = basis->arena };
	int count, *beds = raised_beds(basis->survey, &count);
	struct groups groups = shape_groups(basis->plot, basis->survey, beds, count);

	*out = (struct walls){ .count = 0 };
	wall_beds(&lists, &job, beds, &groups);
	out->list = lists.laid;
	out->not_laid = lists.not_laid;
	groups_fini(&groups);
	free(beds);
}

static int by_region(const void *region, const void *wall)
{
	return *(const int *)region - ((const struct wall *)wall)->region;
}

const struct wall *walls_find(const struct walls *walls, int region)
{
	if (walls->count == 0)
		return NULL;
	return bsearch(&region, walls->list, (size_t)walls->count, sizeof *walls->list, by_region);
}

void walls_items(struct item_list *items, const struct walls *walls)
{
	nm cartridge = block_length(items->allow, ALLOW_CARTRIDGE);
	double bead = 0;

	for (int i = 0; i < walls->count && !stop_asked(); i++)
		bead += walls->list[i].bead;
	if (bead <= 0)
		return;
	double cartridges = bead / metres(cartridge);

	item_add(items, &(struct item){ .good = GOOD_ADHESIVE, .section = SECTION_WALLS,
		.laid = cartridges, .order = whole(cartridges),
		.note = { .kind = NOTE_CARTRIDGE, .lengths = { cartridge } } });
}

static const struct figure wall_figures[] = {
	{ "bed", NULL, "", FIELD(REGION, wall, region), .flags = PANEL_TITLE },
	{ "block_m", NULL, NULL, FIELD(SIZE, wall, block) },
	{ "inner_area_m2", NULL, NULL, FIELD(AREA, wall, inner_area) },
	{ NULL, NULL, "Courses", FIELD(COUNT, wall, courses) },
	{ "whole_blocks", NULL, "Whole blocks", FIELD(COUNT, wall, whole_blocks) },
	{ "cut_pieces", NULL, "Cut pieces", FIELD(COUNT, wall, cut_pieces) },
	{ NULL, NULL, "Weight", FIELD(WEIGHT, wall, weight) },
	{ NULL, NULL, NULL, FIELD(SIZE, wall, cap_block) },
	{ NULL, NULL, NULL, FIELD(OBJECT, wall, odd), .table = &wall_course_table },
	{ NULL, NULL, NULL, FIELD(OBJECT, wall, even), .table = &wall_course_table },
	{ NULL, NULL, NULL, FIELD(OBJECT, wall, cap), .table = &wall_course_table },
};
const struct figure_table wall_table = FIGURE_TABLE(wall, wall_figures);

static const struct figure not_laid_figures[] = {
	{ "bed", NULL, NULL, FIELD(REGION, wall_not_laid, region) },
	{ "about_blocks", NULL, NULL, FIELD(COUNT, wall_not_laid, about_blocks) },
};
const struct figure_table wall_not_laid_table = FIGURE_TABLE(wall_not_laid, not_laid_figures);
