#include "screen/plan_plants.h"
#include "base/number.h"
#include "editor/marks.h"
#include "screen/borders.h"

#include <math.h>

/* More edges than that would drown the plan. */
enum { EDGES_MOST = 1000 };

/* The near view is drawn character by character, others cell by cell. */
struct picture {
	const struct scene *scene;
	const struct area *plan;
	const struct grain *grain;
	struct rectangle cells; /* in view */
	int across, down;       /* of a cell: parts that are in a plant's spread or not */
};

/* A grown plant: its middle and its radius, in parts of cells across and down. */
struct crown {
	double across, down;           /* of the middle, from the datum */
	double half_across, half_down;
};

static struct crown crown_of(const struct picture *picture, struct place at, double cells)
{
	return (struct crown){ (at.x + 0.5) * picture->across, (at.y + 0.5) * picture->down,
		cells / 2 * picture->across, cells / 2 * picture->down };
}

/* Whether the middle of a part is in the spread. */
static bool holds(const struct crown *crown, int x, int y)
{
	return hypot((x + 0.5 - crown->across) / crown->half_across,
		(y + 0.5 - crown->down) / crown->half_down) <= 1;
}

static bool is_edge(const struct crown *crown, int x, int y)
{
	return holds(crown, x, y) && !(holds(crown, x - 1, y) && holds(crown, x + 1, y) &&
		holds(crown, x, y - 1) && holds(crown, x, y + 1));
}

/* The parts in view that it may reach; none: right is before left. */
static struct rectangle reach_of(const struct picture *picture, const struct crown *crown)
{
	const struct rectangle *cells = &picture->cells;

	return (struct rectangle){
		most((int)floor(crown->across - crown->half_across),
			cells->left * picture->across),
		most((int)floor(crown->down - crown->half_down), cells->top * picture->down),
		least((int)ceil(crown->across + crown->half_across),
			(cells->right + 1) * picture->across - 1),
		least((int)ceil(crown->down + crown->half_down),
			(cells->bottom + 1) * picture->down - 1) };
}

static bool is_empty(struct rectangle r)
{
	return r.right < r.left || r.bottom < r.top;
}

static enum mark mark_of(const struct scene *scene, struct place cell)
{
	return mark_at(scene->editor, &scene->mirror, cell.x, cell.y);
}

/* ---- Edges ----------------------------------------------------------------------------------- */

/* Whether letter, mark or line has that character of a cell. */
static bool is_taken(const struct picture *picture, struct place cell, int column, int row)
{
	const struct scene *scene = picture->scene;
	int columns = picture->grain->columns, rows = picture->grain->rows;
	enum border right = scene_right(scene, cell.x, cell.y);
	enum border below = scene_below(scene, cell.x, cell.y);

	if (row == 0 && column == 0 && scene_is_lettered(scene, cell.x, cell.y))
		return true;
	if (row == 0 && column == (columns > 1) && mark_of(scene, cell) != MARK_NONE)
		return true;
	if (columns == 1)
		return right > BORDER_WALL || below > BORDER_WALL;
	return (column == columns - 1 && right != BORDER_NONE) ||
		(row == rows - 1 && borders_has_foot(below));
}

static void draw_sign(const struct picture *picture, struct place cell, int column, int row,
	wchar_t sign, bool is_letter)
{
	const struct scene *scene = picture->scene;
	const struct grain *grain = picture->grain;
	struct paint paint = scene_paint(scene, cell.x, cell.y);
	int last = grain->rows - 1;

	paint.is_bold = paint.is_bold || is_letter;
	if (row == last)
		borders_below(&paint, grain->columns == 1 ? BORDER_NONE :
			scene_below(scene, cell.x, cell.y));
	brush_put(picture->plan, (cell.y - picture->cells.top) * grain->rows + row,
		(cell.x - picture->cells.left) * grain->columns + column, sign, paint);
}

/* A cell of several characters that is one part has its sign at the mark's place. */
static void draw_part(const struct picture *picture, int x, int y)
{
	struct sign edge = mark_sign(MARK_PLANT);
	struct place cell = { x / picture->across, y / picture->down };
	bool is_whole = picture->across < picture->grain->columns;
	int column = is_whole ? 1 : x % picture->across, row = y % picture->down;

	if (!is_taken(picture, cell, column, row))
		draw_sign(picture, cell, column, row, brush_has_unicode() ?
			(wchar_t)edge.code : (wchar_t)edge.plain, false);
}

static void draw_edge(const struct picture *picture, const struct crown *crown)
{
	struct rectangle reach = reach_of(picture, crown);

	for (int y = reach.top; y <= reach.bottom; y++)
		for (int x = reach.left; x <= reach.right; x++)
			if (is_edge(crown, x, y))
				draw_part(picture, x, y);
}

/* ---- Letters --------------------------------------------------------------------------------- */

static void draw_letter(const struct picture *picture, struct place cell, char letter)
{
	const struct scene *scene = picture->scene;

	if (rectangle_holds(picture->cells, cell) && mark_of(scene, cell) == MARK_PLANT)
		draw_sign(picture, cell, picture->grain->columns > 1, 0, (wchar_t)letter,
			true);
}

/* ---- Drifts ---------------------------------------------------------------------------------- */

/* Where it stands, on the character there, if nothing else is. */
static void draw_spot(const struct picture *picture, struct spot at, char letter)
{
	nm side = plot_cell(picture->scene->editor->plot);
	struct place cell = { (int)(at.x / side), (int)(at.y / side) };
	int column = (int)(at.x % side * picture->grain->columns / side);
	int row = (int)(at.y % side * picture->grain->rows / side);

	if (rectangle_holds(picture->cells, cell) && !is_taken(picture, cell, column, row))
		draw_sign(picture, cell, column, row, (wchar_t)letter, false);
}

static bool is_in_view(const struct picture *picture, int region)
{
	const struct region *r = &picture->scene->editor->takeoff.survey.regions[region];
	const struct rectangle *view = &picture->cells;

	return r->left <= view->right && r->most.x >= view->left &&
		r->first_cell.y <= view->bottom && r->most.y >= view->top;
}

/* As far as they are counted. */
static void draw_drifts(const struct picture *picture)
{
	const struct editor *editor = picture->scene->editor;
	const struct planting *planting = &editor->takeoff.planting;

	for (int i = 0; !editor->is_stale && i < planting->count; i++) {
		const struct planting_row *row = &planting->list[i];

		if (row->region == NO_REGION || !is_in_view(picture, row->region))
			continue;
		for (int64_t j = row->specimens; j < row->spot_count; j++)
			draw_spot(picture, row->spots[j].at, row->letter);
	}
}

/* ---- All ------------------------------------------------------------------------------------- */

/* How many cells wide it is when it is grown. */
static double width_of(const struct picture *picture, const struct plant *plant)
{
	const struct plot *plot = picture->scene->editor->plot;

	return (double)plant_spread(plant, plot_units(plot)) / (double)plot_cell(plot);
}

/* Draws the edges in view, or only counts them up to one more than are drawn. */
static int edges(const struct picture *picture, const struct plants *plants, bool is_drawn)
{
	int count = 0;

	for (size_t i = 0; i < plants->count; i++) {
		double width = width_of(picture, &plants->items[i]);

		for (size_t j = 0; j < plants->items[i].specimen_count; j++) {
			struct crown crown = crown_of(picture, plants->items[i].specimens[j],
				width);

			if (count > EDGES_MOST || is_empty(reach_of(picture, &crown)))
				continue;
			count++;
			if (is_drawn)
				draw_edge(picture, &crown);
		}
	}
	return count;
}

void plan_plants_draw(const struct scene *scene, const struct area *plan, struct place blocks)
{
	const struct plants *plants = &scene->editor->plot->details.plants;
	const struct view *view = &scene->editor->view;
	const struct grain *grain = view_grain(view);
	bool is_near = grain->rows > 1;
	const struct picture picture = { scene, plan, grain, { view->first.x, view->first.y,
		view->first.x + blocks.x - 1, view->first.y + blocks.y - 1 },
		is_near ? grain->columns : 1, is_near ? grain->rows : 1 };

	if (is_near)
		draw_drifts(&picture);
	if (edges(&picture, plants, false) <= EDGES_MOST)
		edges(&picture, plants, true);
	for (size_t i = 0; i < plants->count; i++)
		for (size_t j = 0; j < plants->items[i].specimen_count; j++)
			draw_letter(&picture, plants->items[i].specimens[j],
				plants->items[i].letter);
}
