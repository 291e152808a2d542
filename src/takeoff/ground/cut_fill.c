#include "takeoff/ground/cut_fill.h"
#include "base/measure.h"
#include "base/number.h"
#include "base/stop.h"

#include <assert.h>
#include <math.h>
#include <stdlib.h>

/* Where the formation of a zone lies. */
struct to_dig {
	nm depth;      /* below the finished ground; of a level one where that is lowest */
	bool is_level;
	nm level;      /* its drop, where it is level */
};

/* What the ground is gone over with. By zone, then what within walls is loosened, then all other
 * ground in no zone. */
struct pass {
	const struct basis *basis;
	const struct surface *surface;
	nm cell, step;
	struct cover_box plan;
	struct to_dig *to_dig;
	int kept_sod; /* the index of what is loosened */
	struct graded *graded;
	bool *is_uneven; /* not everywhere dug by its depth */
	struct cut_fill finished;
	struct low_square *squares;
	int columns, rows; /* of squares */
	nm *dig;
};

static void add_height(struct cut_fill *to, double area, nm height)
{
	if (height > 0)
		to->cut += volume_of(area, height);
	else
		to->fill += volume_of(area, -height);
	to->net = to->cut - to->fill;
}

/* ---- Parts of cells -------------------------------------------------------------------------- */

static void fill_square(struct pass *pass, nm right, nm down, double volume, nm deep)
{
	struct low_square *square = &pass->squares[down / pass->step * pass->columns +
		right / pass->step];

	square->fill += volume;
	square->deepest = nm_most(square->deepest, deep);
}

/* How far the formation is below the finished ground at a spot, which has that drop. */
static nm dig_below(const struct to_dig *to_dig, nm finished)
{
	return to_dig->is_level ? to_dig->level - finished : to_dig->depth;
}

static struct earth cut_of(const struct pass *pass, int owner, double area, nm deep)
{
	const struct block *allow = pass->basis->allow;
	struct earth cut;

	if (owner != pass->kept_sod)
		return earth_below(allow, area, deep);
	cut = earth_below(allow, area, deep + block_length(allow, ALLOW_SOD));
	cut.sod = 0;
	return cut;
}

static void take_part(struct pass *pass, const struct cover_box *part)
{
	const struct to_dig *to_dig = &pass->to_dig[part->owner];
	nm right = part->left + (part->right - part->left) / 2;
	nm down = part->top + (part->bottom - part->top) / 2;
	nm drop = surface_finished(pass->surface, right, down);
	nm finished = drop - surface_existing(pass->surface, right, down);
	nm deep = finished + dig_below(to_dig, drop);
	double area = area_of(part->right - part->left, part->bottom - part->top);
	struct graded *graded = &pass->graded[part->owner];
	struct earth cut;

	add_height(&pass->finished, area, finished);
	pass->is_uneven[part->owner] = pass->is_uneven[part->owner] ||
		deep != to_dig->depth;
	if (deep > 0) {
		cut = cut_of(pass, part->owner, area, deep);
		earth_add(&graded->cut, &cut);
		graded->dug += area;
		graded->deepest = nm_most(graded->deepest, deep);
	} else if (deep < 0) {
		graded->fill += volume_of(area, -deep);
		fill_square(pass, right, down, volume_of(area, -deep), -deep);
	}
}

/* The next line of cells or of the survey, or the end. */
static nm next_line(const struct pass *pass, nm at, nm end)
{
	return nm_least(end, nm_least((at / pass->cell + 1) * pass->cell,
		(at / pass->step + 1) * pass->step));
}

static void take_piece(struct pass *pass, const struct cover_box *piece)
{
	struct cover_box part = *piece;

	for (part.top = piece->top; part.top < piece->bottom && !stop_asked();
		part.top = part.bottom) {
		part.bottom = next_line(pass, part.top, piece->bottom);
		for (part.left = piece->left; part.left < piece->right; part.left = part.right) {
			part.right = next_line(pass, part.left, piece->right);
			take_part(pass, &part);
		}
	}
}

/* Whether a piece has what is on a line: its far side is the next one's but at the plan's end. */
static bool reaches(nm at, nm end, nm plan_end)
{
	return at < end || (at == end && end == plan_end);
}

static void mark_points(struct pass *pass, const struct cover_box *piece)
{
	nm step = pass->step;

	for (nm y = quotient_up(piece->top, step);
		reaches(y * step, piece->bottom, pass->plan.bottom); y++)
		for (nm x = quotient_up(piece->left, step);
			reaches(x * step, piece->right, pass->plan.right); x++)
			pass->dig[y * (pass->columns + 1) + x] =
				dig_below(&pass->to_dig[piece->owner],
					surface_finished(pass->surface, x * step, y * step));
}

/* Beds whose inside stays undug: no zone has the ground within their walls. */
static void paint_beds(struct cover_boxes *boxes, const struct pass *pass,
	const struct wall_levels *walls)
{
	const struct survey *survey = pass->basis->survey;
	nm cell = pass->cell;

	for (int y = 0; y < survey->rows && !stop_asked(); y++)
		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];

			if (run->region != NO_REGION && wall_level_of(walls, run->region))
				cover_boxes_add(boxes, (struct cover_box){ run->left * cell,
					y * cell, run->right * cell, (y + 1) * cell,
					pass->kept_sod });
		}
}

/* The zones' ground, what is loosened and all the rest of the plan. */
static void take_ground(struct pass *pass, const struct cut_ground *ground)
{
	struct arena arena = ARENA_EMPTY;
	struct cover_boxes boxes = { NULL, 0, 0 };
	struct cover swept;

	for (size_t i = 0; i < ground->cover->count && !stop_asked(); i++)
		cover_boxes_add(&boxes, ground->cover->pieces[i]);
	paint_beds(&boxes, pass, ground->walls);
	pass->plan.owner = pass->kept_sod + 1;
	cover_boxes_add(&boxes, pass->plan);
	cover_sweep(&swept, &arena, boxes.list, boxes.count);
	free(boxes.list);
	for (size_t i = 0; i < swept.count && !stop_asked(); i++) {
		take_piece(pass, &swept.pieces[i]);
		mark_points(pass, &swept.pieces[i]);
	}
	arena_clear(&arena);
}

/* ---- Unit areas ------------------------------------------------------------------------------ */

/* Where lines of the survey are, the last ones moved in to the plan's side. */
static nm *lines(struct arena *arena, int count, nm step, nm side)
{
	nm *offsets = arena_new(arena, (size_t)count, sizeof *offsets);

	for (int i = 0; i < count; i++)
		offsets[i] = nm_least(i * step, side);
	return offsets;
}

static struct cut_fill finished_by_unit_areas(const struct pass *pass)
{
	struct arena arena = ARENA_EMPTY;
	int columns = pass->columns + 1, rows = pass->rows + 1;
	const nm *across = lines(&arena, columns, pass->step, pass->plan.right);
	const nm *down = lines(&arena, rows, pass->step, pass->plan.bottom);
	nm *heights = arena_new(&arena, (size_t)columns * (size_t)rows, sizeof *heights);
	struct cut_fill sum;

	for (int y = 0; y < rows && !stop_asked(); y++)
		for (int x = 0; x < columns; x++)
			heights[y * columns + x] =
				surface_finished(pass->surface, across[x], down[y]) -
				surface_existing(pass->surface, across[x], down[y]);
	sum = unit_areas(heights, across, columns, down, rows);
	arena_clear(&arena);
	return sum;
}

/* ---- All ------------------------------------------------------------------------------------- */

/* Ground that is dug equally deep all over is reckoned from its depth, as where nothing is
 * graded. */
static void even_out(struct pass *pass, const struct zones *zones)
{
	for (int i = 0; i < zones->count && !stop_asked(); i++)
		if (!pass->is_uneven[i])
			pass->graded[i] = (struct graded){
				.cut = earth_below(pass->basis->allow, zones->list[i].area,
					pass->to_dig[i].depth),
				.dug = pass->to_dig[i].depth > 0 ? zones->list[i].area : 0,
				.deepest = pass->to_dig[i].depth };
}

/* Ground in no zone, that whose sod is kept too. */
static struct graded others_of(const struct pass *pass)
{
	const struct graded *within = &pass->graded[pass->kept_sod];
	struct graded all = pass->graded[pass->kept_sod + 1];

	earth_add(&all.cut, &within->cut);
	all.fill += within->fill;
	all.deepest = nm_most(all.deepest, within->deepest);
	return all;
}

bool cut_fills_grade_others(const struct cut_fills *cut_fills)
{
	return earth_sum(&cut_fills->others.cut) > 0 || cut_fills->others.fill > 0;
}

static struct cut_fill formation_of(const struct graded *graded, int count)
{
	struct cut_fill sum = { 0, 0, 0 };

	for (int i = 0; i < count && !stop_asked(); i++) {
		sum.cut += earth_sum(&graded[i].cut);
		sum.fill += graded[i].fill;
	}
	sum.net = sum.cut - sum.fill;
	return sum;
}

static double area_of_others(const struct survey *survey, const struct zones *zones)
{
	double area = survey_area((int64_t)survey->columns * survey->rows, survey->cell);

	for (int i = 0; i < zones->count && !stop_asked(); i++)
		area -= zones->list[i].area;
	return fmax(0, area);
}

static struct to_dig to_dig_of(const struct survey *survey, const struct cut_ground *ground,
	const struct zone *zone)
{
	struct to_dig to_dig = { zone_depth(ground->embeds, zone), false, 0 };
	const struct wall_level *wall = zone->part == DIG_WALL || zone->part == DIG_INSIDE ?
		wall_level_of(ground->walls, zone->region) : NULL;

	if (wall)
		to_dig = (struct to_dig){ to_dig.depth, true,
			wall->base + zone_base(survey, zone) };
	return to_dig;
}

void cut_fill_compute(struct cut_fills *out, const struct basis *basis,
	const struct surface *surface, const struct cut_ground *ground)
{
	const struct zones *zones = ground->zones;
	const struct survey *survey = basis->survey;
	const struct levels *levels = surface->levels;
	size_t count = (size_t)zones->count + 2;
	struct pass pass = { .basis = basis, .surface = surface, .cell = survey->cell,
		.step = levels->step, .columns = levels->columns - 1, .rows = levels->rows - 1,
		.plan = { 0, 0, survey->columns * survey->cell, survey->rows * survey->cell, 0 },
		.to_dig = memory_new(count, sizeof(struct to_dig)), .kept_sod = zones->count,
		.is_uneven = memory_new(count, sizeof *pass.is_uneven),
		.graded = arena_new(basis->arena, count, sizeof(struct graded)) };

	assert(surface->has_levels);
	pass.squares = arena_new(basis->arena, (size_t)pass.columns * (size_t)pass.rows,
		sizeof *pass.squares);
	pass.dig = arena_new(basis->arena, (size_t)levels->columns * (size_t)levels->rows,
		sizeof *pass.dig);
	for (int i = 0; i < pass.columns * pass.rows; i++) {
		pass.squares[i].right = i % pass.columns * pass.step;
		pass.squares[i].down = i / pass.columns * pass.step;
	}
	for (int i = 0; i < zones->count && !stop_asked(); i++)
		pass.to_dig[i] = to_dig_of(survey, ground, &zones->list[i]);
	take_ground(&pass, ground);
	even_out(&pass, zones);
	free(pass.to_dig);
	free(pass.is_uneven);
	*out = (struct cut_fills){ .zones = pass.graded, .others = others_of(&pass),
		.others_area = area_of_others(survey, zones),
		.formation = formation_of(pass.graded, (int)count), .finished = pass.finished,
		.by_unit_areas = finished_by_unit_areas(&pass), .squares = pass.squares,
		.square_count = pass.columns * pass.rows, .dig = pass.dig };
}
