#include "takeoff/walls/wall.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/stop.h"
#include "plot/mirror.h"
#include "survey/shape.h"
#include "takeoff/walls/build.h"

#include <assert.h>
#include <stdlib.h>

/* About as many blocks as the runs are long, at least one. */
static struct wall_not_laid not_laid(const struct site *site, const struct masonry *masonry)
{
	nm laid = masonry->courses * build_outline_length(site, 4 * masonry->depth);
	int64_t about = laid > 0 ? quotient_up(laid, masonry->length) : 1;

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

/* What came of a bed, for those that are like it in the same way. */
struct outcome {
	int at; /* in the list of walls that are laid, or are not */
	int caps_not_laid;
	size_t first_snag, snag_count;
};

/* Beds that are images of one another. */
struct family {
	int region;                /* of the first */
	const struct build *build; /* of the first; NULL where it is not laid */
	int outcomes[TURNS];       /* by turn of the first, numbers from 1; 0: none yet */
};

/* What walling all beds needs. */
struct walling {
	const struct job *job;
	struct lists lists;
	struct mirror mirror;
	struct outcome *outcomes;
	size_t outcome_count, outcome_capacity;
};

static struct site site_of(const struct job *job, int region, struct outline *outline,
	struct arena *outlines)
{
	const struct survey *survey = job->basis->survey;

	outline_trace(outline, outlines, job->basis->plot, survey, region);
	return (struct site){ .job = job, .room = { survey, region, outline },
		.bed = &survey->regions[region].entry->block };
}

/* ---- Which way an image is turned ------------------------------------------------------------ */

/* -1 or 1 where the bed is left or right of the upright axis, 0 where its middle is on it. */
static int side_across(const struct mirror *mirror, const struct region *region)
{
	return sign(region->left + region->most.x + 1 - mirror->across);
}

static int side_down(const struct mirror *mirror, const struct region *region)
{
	return sign(region->first_cell.y + region->most.y + 1 - mirror->down);
}

/* The image that a bed's place asks for. */
static enum turn turn_by_place(const struct mirror *mirror, const struct region *a,
	const struct region *b)
{
	bool across = side_across(mirror, a) * side_across(mirror, b) < 0;
	bool down = side_down(mirror, a) * side_down(mirror, b) < 0;

	if (mirror->kind == MIRROR_HALF_TURN)
		return across || (down && side_across(mirror, a) == 0) ? TURN_HALF : TURN_NONE;
	if (across)
		return down ? TURN_HALF : TURN_LEFT_RIGHT;
	return down ? TURN_TOP_BOTTOM : TURN_NONE;
}

/* The turn that is preferred, else the first, by which the one is the other. */
static enum turn turn_to(struct arena *arena, const struct outline *from, const struct outline *to,
	enum turn preferred)
{
	struct image unused;
	int turn = TURN_NONE;

	if (image_find(&unused, arena, from, to, preferred))
		return preferred;
	while (turn < TURNS - 1 && !image_find(&unused, arena, from, to, (enum turn)turn))
		turn++;
	return (enum turn)turn;
}

/* How the first of the family is turned to be the region. */
static enum turn turn_of(const struct walling *walling, const struct family *family, int region)
{
	const struct basis *basis = walling->job->basis;
	const struct region *regions = basis->survey->regions;
	struct arena outlines = ARENA_EMPTY;
	enum turn turn = TURN_NONE;
	struct outline from, to;

	if (!family->build && shape_is_equal(basis->plot, basis->survey, family->region, region))
		return TURN_NONE;
	if (family->build)
		turn = turn_by_place(&walling->mirror, &regions[family->region], &regions[region]);
	outline_trace(&from, &outlines, basis->plot, basis->survey, family->region);
	outline_trace(&to, &outlines, basis->plot, basis->survey, region);
	turn = turn_to(&outlines, &from, &to, turn);
	arena_clear(&outlines);
	return family->build ? symmetry_first_turn(family->build->turns, turn) : turn;
}

/* ---- One bed after another ------------------------------------------------------------------- */

/* Lays the bed's wall: by itself where it is the first of its family, else as the first's
 * image. */
static void lay_wall(struct walling *walling, struct family *family, const struct site *site,
	enum turn turn)
{
	const struct job *job = walling->job;
	struct build *build = arena_new(job->basis->arena, 1, sizeof *build);
	struct arena outlines = ARENA_EMPTY;
	struct wall *wall;

	if (!family->build) {
		build_lay(build, site);
		family->build = build;
	} else {
		struct outline from;
		struct image image;

		outline_trace(&from, &outlines, job->basis->plot, job->basis->survey,
			family->region);
		if (!stop_asked() && image_find(&image, &outlines, &from, site->room.outline, turn))
			build_image(build, site, family->build, &from, &image);
	}
	wall = add_laid(&walling->lists, job->walls);
	build_measure(wall, site, build);
	wall->like = family->region;
	wall->turn = turn;
	arena_clear(&outlines);
}

/* Lays the bed's wall or, where it does not fit, says how many blocks it would take. Notes what
 * came of it. */
static void wall_bed(struct walling *walling, struct family *family, int region, enum turn turn)
{
	const struct job *job = walling->job;
	struct walls *walls = job->walls;
	struct arena outlines = ARENA_EMPTY;
	struct outline outline;
	struct site site = site_of(job, region, &outline, &outlines);
	struct masonry masonry = wall_masonry(job->basis->allow, site.bed);
	struct outcome outcome = { .caps_not_laid = -walls->caps_not_laid,
		.first_snag = job->basis->snags->count };
	bool is_laid = site_takes_wall(&site, &masonry);

	outcome.at = is_laid ? walls->count : walls->not_laid_count;
	if (is_laid)
		lay_wall(walling, family, &site, turn);
	else
		*add_not_laid(&walling->lists, walls) = not_laid(&site, &masonry);
	arena_clear(&outlines);
	outcome.caps_not_laid += walls->caps_not_laid;
	outcome.snag_count = job->basis->snags->count - outcome.first_snag;
	walling->outcomes = memory_grow(walling->outcomes, walling->outcome_count,
		&walling->outcome_capacity, sizeof *walling->outcomes);
	walling->outcomes[walling->outcome_count++] = outcome;
	family->outcomes[turn] = (int)walling->outcome_count;
}

/* The same for a bed like one that was seen to: its wall has the same runs. */
static void wall_again(struct walling *walling, const struct family *family,
	const struct outcome *outcome, int region)
{
	const struct basis *basis = walling->job->basis;
	struct lists *lists = &walling->lists;
	struct walls *walls = walling->job->walls;

	if (family->build) {
		struct wall *wall = add_laid(lists, walls);

		*wall = lists->laid[outcome->at];
		wall->region = region;
		wall->bed = &basis->survey->regions[region].entry->block;
	} else {
		struct wall_not_laid *without = add_not_laid(lists, walls);

		*without = lists->not_laid[outcome->at];
		without->region = region;
	}
	walls->caps_not_laid += outcome->caps_not_laid;
	snags_repeat(basis->snags, outcome->first_snag, outcome->snag_count, region);
}

static void wall_next(struct walling *walling, struct family *family, int region)
{
	enum turn turn = turn_of(walling, family, region);
	int outcome = family->outcomes[turn];

	if (outcome == 0) {
		wall_bed(walling, family, region, turn);
		return;
	}
	assert(walling->outcomes);
	wall_again(walling, family, &walling->outcomes[outcome - 1], region);
}

/* In their order, but each family's pieces once. */
static void wall_beds(struct walling *walling, const struct shaped *beds,
	const struct groups *groups)
{
	struct family *families = memory_new((size_t)groups->count, sizeof *families);

	for (int i = 0; i < groups->item_count && !stop_asked(); i++) {
		struct family *family = &families[groups->of[i]];

		if (groups->list[groups->of[i]].members[0] == i) {
			family->region = beds[i].region;
			wall_bed(walling, family, beds[i].region, TURN_NONE);
		} else {
			wall_next(walling, family, beds[i].region);
		}
	}
	free(families);
	free(walling->outcomes);
}

/* True where walls of both are alike on beds of one shape. */
static bool are_walls_alike(const struct block *a, const struct block *b)
{
	static const enum attribute attributes[] = { BED_BLOCK, BED_JOINT, BED_CAP,
		BED_COURSES, BED_DENSITY };
	bool alike = true;

	for (size_t i = 0; i < sizeof attributes / sizeof *attributes; i++)
		alike = alike && value_equal(attribute_row(attributes[i])->rule.kind,
			block_effective(a, attributes[i]),
			block_effective(b, attributes[i]));
	return alike;
}

/* The number of the legend's first entry whose walls are like this one's. */
static int kind_of(const struct details *details, const struct entry *entry)
{
	int kind = 0;

	while (details->legend[kind].class != CLASS_BED ||
		!are_walls_alike(&details->legend[kind].block, &entry->block))
		kind++;
	return kind;
}

/* The caller frees. */
static struct shaped *raised_beds(const struct basis *basis, int *count)
{
	const struct survey *survey = basis->survey;
	const struct entry *entry = NULL;
	struct shaped *beds = NULL;
	size_t capacity = 0;
	int kind = 0;

	*count = 0;
	for (int i = 0; i < survey->region_count && !stop_asked(); i++) {
		if (!region_is_raised(&survey->regions[i]))
			continue;
		if (survey->regions[i].entry != entry) {
			entry = survey->regions[i].entry;
			kind = kind_of(&basis->plot->details, entry);
		}
		beds = memory_grow(beds, (size_t)*count, &capacity, sizeof *beds);
		beds[(*count)++] = (struct shaped){ i, kind };
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
	struct walling walling = { .job = &job, .lists = { .arena = basis->arena },
		.mirror = mirror_of(basis->plot) };
	int count;
	struct shaped *beds = raised_beds(basis, &count);
	struct groups groups = shape_images(basis->plot, basis->survey, beds, count);

	*out = (struct walls){ .count = 0 };
	wall_beds(&walling, beds, &groups);
	out->list = walling.lists.laid;
	out->not_laid = walling.lists.not_laid;
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
	int64_t share = block_number(items->allow, ALLOW_ADHESIVE_SPARE);
	double cartridges = bead / metres(cartridge);
	double spare = cartridges * (double)share / (double)(100 * MILLION);

	item_add(items, &(struct item){ .good = GOOD_ADHESIVE, .section = SECTION_WALLS,
		.laid = cartridges, .spare = spare, .order = whole(cartridges + spare),
		.note = { .kind = NOTE_CARTRIDGE, .lengths = { cartridge }, .percent = share } });
}

static const struct word turn_words[] = {
	[TURN_NONE] = { "none", NULL, NULL },
	[TURN_LEFT_RIGHT] = { "left-right", NULL, NULL },
	[TURN_TOP_BOTTOM] = { "top-bottom", NULL, NULL },
	[TURN_HALF] = { "half-turn", NULL, NULL },
	[TURN_QUARTER] = { "quarter-right", NULL, NULL },
	[TURN_QUARTER_BACK] = { "quarter-left", NULL, NULL },
	[TURN_FALLING] = { "falling-diagonal", NULL, NULL },
	[TURN_RISING] = { "rising-diagonal", NULL, NULL },
};
static const struct figure wall_figures[] = {
	{ "bed", NULL, "", FIELD(REGION, wall, region), .flags = PANEL_TITLE | ROW_KEY },
	{ "block_m", NULL, NULL, FIELD(SIZE, wall, block) },
	{ "joint_m", NULL, NULL, FIELD(LENGTH, wall, joint) },
	{ "like", NULL, NULL, FIELD(REGION, wall, like) },
	{ "turned", NULL, NULL, FIELD(WORD, wall, turn), .words = turn_words },
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
	{ "bed", NULL, NULL, FIELD(REGION, wall_not_laid, region), .flags = ROW_KEY },
	{ "about_blocks", NULL, NULL, FIELD(COUNT, wall_not_laid, about_blocks) },
};
const struct figure_table wall_not_laid_table = FIGURE_TABLE(wall_not_laid, not_laid_figures);
