#include "screen/scene.h"
#include "screen/brush.h"

#include <stdlib.h>

enum { LETTER_EVERY = 5 };

struct scene scene_of(const struct editor *editor)
{
	const struct details *details = &editor->plot->details;
	const struct levels *levels = &details->levels;
	int counts[CLASSES] = { 0 };
	struct place at = editor->cursor;
	struct scene scene = { .editor = editor, .mirror = mirror_of(editor->plot),
		.level = colour_level(), .has_stamp = editor->is_marked,
		.light = light_of(editor),
		.has_outline = editor->is_marked || editor->is_pegged,
		.outline = editor->is_marked ? editor->marked : editor_pegged(editor) };

	if (scene.has_stamp)
		scene.stamp = (struct rectangle){ at.x, at.y,
			at.x + editor->carried.ground.columns - 1,
			at.y + editor->carried.ground.rows - 1 };
	for (size_t i = 0; i < details->legend_count; i++)
		scene.ranks[(int)details->legend[i].letter] = counts[details->legend[i].class]++;
	if (editor->layer == LAYER_LEVELS && !editor->moment && levels->step) {
		scene.levels = levels;
		scene.range = levels_range(levels);
	}
	return scene;
}

/* ---- Ground ---------------------------------------------------------------------------------- */

char scene_letter(const struct scene *scene, int x, int y)
{
	const struct ground *ground = &scene->editor->plot->ground;
	char carried = PATCH_NOTHING;

	if (!ground_holds(ground, x, y))
		return '\0';
	if (scene->has_stamp && rectangle_holds(scene->stamp, (struct place){ x, y }))
		carried = ground_cell(&scene->editor->carried.ground, x - scene->stamp.left,
			y - scene->stamp.top);
	return carried == PATCH_NOTHING ? ground_cell(ground, x, y) : carried;
}

char scene_commonest(const struct scene *scene, struct rectangle cells)
{
	const struct rectangle *stamp = &scene->stamp;
	struct place first = { cells.left, cells.top }, last = { cells.right, cells.bottom };
	char carried;

	if (!scene->has_stamp || !rectangle_holds(*stamp, first) || !rectangle_holds(*stamp, last))
		return view_letter(&scene->editor->plot->ground, cells);
	carried = view_letter(&scene->editor->carried.ground, (struct rectangle){
		cells.left - stamp->left, cells.top - stamp->top, cells.right - stamp->left,
		cells.bottom - stamp->top });
	return carried == PATCH_NOTHING ? view_letter(&scene->editor->plot->ground, cells) :
		carried;
}

struct paint scene_ground(const struct scene *scene, char letter)
{
	return colour_of(scene->level, plot_class_of(scene->editor->plot, letter),
		scene->ranks[(int)letter]);
}

bool scene_is_hatched(const struct scene *scene, char letter)
{
	return colour_is_hatched(scene->level, plot_class_of(scene->editor->plot, letter),
		scene->ranks[(int)letter]);
}

bool scene_has_shade(const struct scene *scene, char letter)
{
	return scene->ranks[(int)letter] < colour_shades(scene->level);
}

bool scene_is_shaded(const struct scene *scene)
{
	return scene->level == COLOUR_FINE && scene->levels &&
		scene->range.least < scene->range.most;
}

bool scene_is_lit(const struct scene *scene)
{
	return scene->level == COLOUR_FINE && light_is_there(&scene->light);
}

static struct place middle_of(struct rectangle cells)
{
	return (struct place){ (cells.left + cells.right) / 2, (cells.top + cells.bottom) / 2 };
}

char scene_light(const struct scene *scene, struct rectangle cells)
{
	return light_sign(&scene->light, middle_of(cells));
}

int scene_depth(const struct scene *scene, struct rectangle cells)
{
	nm cell = plot_cell(scene->editor->plot);
	nm drop = levels_drop(scene->levels, (cells.left + cells.right + 1) * cell / 2,
		(cells.top + cells.bottom + 1) * cell / 2);
	nm most = scene->range.most - scene->range.least;

	return most ? (int)((drop - scene->range.least) * (COLOUR_DEPTHS - 1) / most) : 0;
}

struct paint scene_shade(const struct scene *scene, struct rectangle cells, char letter)
{
	struct place middle = middle_of(cells);

	if (scene_is_shaded(scene))
		return colour_depth(scene_depth(scene, cells));
	if (scene_is_lit(scene) && light_has_cell(&scene->light, middle))
		return colour_light((int)light_class(&scene->light, middle));
	return scene_ground(scene, letter);
}

bool scene_is_outlined(const struct scene *scene, struct rectangle cells)
{
	const struct rectangle *r = &scene->outline;
	bool is_inside = cells.left > r->left && cells.right < r->right && cells.top > r->top &&
		cells.bottom < r->bottom;

	return scene->has_outline && !is_inside && cells.left <= r->right &&
		cells.right >= r->left && cells.top <= r->bottom && cells.bottom >= r->top;
}

static bool is_cursor(const struct scene *scene, int x, int y)
{
	return scene->editor->cursor.x == x && scene->editor->cursor.y == y;
}

bool scene_is_covered(const struct scene *scene, int x, int y)
{
	return is_cursor(scene, x, y) ||
		scene_is_outlined(scene, (struct rectangle){ x, y, x, y });
}

struct paint scene_paint(const struct scene *scene, int x, int y)
{
	struct rectangle cell = { x, y, x, y };

	if (is_cursor(scene, x, y))
		return colour_cursor(scene->level);
	if (scene_is_outlined(scene, cell))
		return colour_outline(scene->level);
	return scene_shade(scene, cell, scene_letter(scene, x, y));
}

/* ---- Letters and lines ----------------------------------------------------------------------- */

/* Counted from the axis, so that images have letters alike. */
static bool is_fifth(int cell, int axis)
{
	return abs(2 * cell + 1 - axis) / 2 % LETTER_EVERY == LETTER_EVERY / 2;
}

bool scene_is_lettered(const struct scene *scene, int x, int y)
{
	char letter = scene_letter(scene, x, y);
	bool is_side = scene_letter(scene, x - 1, y) != letter ||
		scene_letter(scene, x + 1, y) != letter;
	bool is_end = scene_letter(scene, x, y - 1) != letter ||
		scene_letter(scene, x, y + 1) != letter;

	if (scene_is_covered(scene, x, y))
		return true;
	if (scene->level == COLOUR_NONE)
		return is_side && is_end;
	return (is_side && (is_end || is_fifth(y, scene->mirror.down))) ||
		(is_end && is_fifth(x, scene->mirror.across));
}

static bool is_bed(const struct scene *scene, char letter)
{
	return letter && plot_class_of(scene->editor->plot, letter) == CLASS_BED;
}

/* Which bits say what of the lines at one side of a cell. */
struct line_bits {
	int gate, fence, to_lay, existing;
};

static enum border border_between(const struct scene *scene, char one, char other,
	struct place cell, struct line_bits bits)
{
	int sides = fence_map_at(&scene->editor->fences, cell.x, cell.y);
	int around = around_map_at(&scene->editor->around, cell.x, cell.y);

	if (sides & bits.gate)
		return BORDER_NONE;
	if (sides & bits.fence)
		return BORDER_FENCE;
	if (around & (bits.to_lay | bits.existing))
		return (around & bits.to_lay) ? BORDER_TO_LAY : BORDER_EXISTING;
	return one != other && (is_bed(scene, one) || is_bed(scene, other)) ? BORDER_WALL :
		BORDER_NONE;
}

enum border scene_right(const struct scene *scene, int x, int y)
{
	return border_between(scene, scene_letter(scene, x, y), scene_letter(scene, x + 1, y),
		(struct place){ x, y }, (struct line_bits){ GATE_RIGHT, FENCE_RIGHT, TO_LAY_RIGHT,
		EXISTING_RIGHT });
}

enum border scene_below(const struct scene *scene, int x, int y)
{
	return border_between(scene, scene_letter(scene, x, y), scene_letter(scene, x, y + 1),
		(struct place){ x, y }, (struct line_bits){ GATE_BELOW, FENCE_BELOW, TO_LAY_BELOW,
		EXISTING_BELOW });
}

wchar_t scene_sign(const struct scene *scene, int x, int y)
{
	static const wchar_t house = 0x2302, kept = 0x25cb;
	int around = around_map_at(&scene->editor->around, x, y);

	if (around & CELL_HOUSE)
		return brush_has_unicode() ? house : L'h';
	if (around & CELL_KEPT)
		return brush_has_unicode() ? kept : L'k';
	return L'\0';
}
