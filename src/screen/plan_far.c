#include "screen/plan_far.h"
#include "base/memory.h"
#include "editor/marks.h"
#include "screen/borders.h"
#include "screen/hatch.h"

#include <stdlib.h>

static const wchar_t upper_half = 0x2580, lower_half = 0x2584;

/* ---- Fences ---------------------------------------------------------------------------------- */

/* Lines are counted with the cells that they are on the far side of, seen from the axis: so a
 * fence and its image are in dots that are images. Those on the axis are with the cells after
 * it. */
static int sides_of(const struct scene *scene, int x, int y)
{
	const struct fence_map *fences = &scene->editor->fences;
	int left = fence_map_at(fences, x - 1, y), above = fence_map_at(fences, x, y - 1);
	int here = fence_map_at(fences, x, y), sides = 0;
	int across = scene->mirror.across, down = scene->mirror.down;

	if (2 * x + 1 >= across)
		sides |= here & (FENCE_RIGHT | GATE_RIGHT);
	if (2 * x + 1 < across || 2 * x == across)
		sides |= left & (FENCE_RIGHT | GATE_RIGHT);
	if (2 * y + 1 >= down)
		sides |= here & (FENCE_BELOW | GATE_BELOW);
	if (2 * y + 1 < down || 2 * y == down)
		sides |= above & (FENCE_BELOW | GATE_BELOW);
	return sides;
}

static int sides_among(const struct scene *scene, struct rectangle cells)
{
	int sides = 0;

	for (int y = cells.top; scene->editor->fences.sides && y <= cells.bottom; y++)
		for (int x = cells.left; x <= cells.right; x++)
			sides |= sides_of(scene, x, y);
	return sides;
}

static bool is_fenced(int sides)
{
	return (sides & (FENCE_RIGHT | FENCE_BELOW)) && !(sides & (GATE_RIGHT | GATE_BELOW));
}

/* The sign of a service, a house, what is kept or a specimen among the cells; '\0': there is
 * none. */
static wchar_t sign_among(const struct scene *scene, struct rectangle cells)
{
	const struct around_map *around = &scene->editor->around;
	wchar_t sign = L'\0';
	int sides = 0;

	for (int y = cells.top; around->cells && y <= cells.bottom; y++)
		for (int x = cells.left; x <= cells.right; x++) {
			sides |= around_map_at(around, x, y);
			sign = sign ? sign : scene_sign(scene, x, y);
		}
	if (sides & (TO_LAY_RIGHT | TO_LAY_BELOW))
		return borders_service(BORDER_TO_LAY, sides & TO_LAY_RIGHT);
	if (sides & (EXISTING_RIGHT | EXISTING_BELOW))
		return borders_service(BORDER_EXISTING, sides & EXISTING_RIGHT);
	if (!sign && (sides & CELL_PLANT))
		return brush_has_unicode() ? (wchar_t)mark_sign(MARK_PLANT).code :
			(wchar_t)mark_sign(MARK_PLANT).plain;
	return sign;
}

/* ---- Letters --------------------------------------------------------------------------------- */

/* The commonest letter of each dot in view; where dots cannot be drawn, of each character. */
struct letters {
	char *list; /* owned; '\0' beyond the plan */
	int columns, rows;
	int deep;   /* rows of a character */
};

static struct rectangle cells_of(const struct scene *scene, int deep, int x, int y)
{
	const struct view *view = &scene->editor->view;
	const struct ground *ground = &scene->editor->plot->ground;

	return deep == 1 ? view_block(view, ground, (struct place){ x, y }) :
		view_dot(view, ground, (struct place){ x, y / 2 }, y % 2);
}

static struct letters letters_of(const struct scene *scene, struct place blocks)
{
	int deep = scene->level == COLOUR_NONE || !brush_has_unicode() ? 1 : 2;
	struct letters letters = { .columns = blocks.x, .rows = blocks.y * deep, .deep = deep };

	letters.list = memory_new((size_t)letters.columns * (size_t)letters.rows, 1);
	for (int y = 0; y < letters.rows; y++)
		for (int x = 0; x < letters.columns; x++) {
			struct rectangle cells = cells_of(scene, deep, x, y);

			letters.list[y * letters.columns + x] = cells.bottom < cells.top ? '\0' :
				scene_commonest(scene, cells);
		}
	return letters;
}

static char letter_at(const struct letters *letters, int x, int y)
{
	bool is_inside = x >= 0 && y >= 0 && x < letters->columns && y < letters->rows;

	return is_inside ? letters->list[y * letters->columns + x] : '\0';
}

/* Whether a character is at a corner of what is of its letter. */
static bool is_corner(const struct letters *letters, struct place at)
{
	int y = at.y * letters->deep;
	char letter = letter_at(letters, at.x, y);

	return (letter_at(letters, at.x - 1, y) != letter ||
		letter_at(letters, at.x + 1, y) != letter) &&
		(letter_at(letters, at.x, y - 1) != letter ||
		letter_at(letters, at.x, y + letters->deep) != letter);
}

/* ---- Characters ------------------------------------------------------------------------------ */

/* A character of one letter: what is around, that at its corners if no shade tells it, a pattern,
 * or blank. */
static void draw_even(const struct scene *scene, const struct letters *letters,
	const struct area *plan, struct place at, struct paint paint)
{
	char letter = letter_at(letters, at.x, at.y * letters->deep);
	const cchar_t *sign = hatch_sign(scene, letter, at.x, at.y);
	wchar_t around = sign_among(scene, cells_of(scene, 1, at.x, at.y));

	if (around)
		brush_put(plan, at.y, at.x, around, paint);
	else if (letter != OPEN_GROUND && !scene_has_shade(scene, letter) && is_corner(letters, at))
		brush_put(plan, at.y, at.x, (wchar_t)letter, paint);
	else if (sign)
		brush_sign(plan, at.y, at.x, sign, paint);
	else
		brush_put(plan, at.y, at.x, L' ', paint);
}

static void draw_letter(const struct scene *scene, const struct letters *letters,
	const struct area *plan, struct place at)
{
	struct rectangle cells = cells_of(scene, 1, at.x, at.y);
	int sides = sides_among(scene, cells);
	struct paint paint = scene_is_outlined(scene, cells) ? colour_outline(scene->level) :
		scene_ground(scene, letter_at(letters, at.x, at.y));

	if (is_fenced(sides))
		borders_fences(plan, at.y, at.x, sides & FENCE_RIGHT, sides & FENCE_BELOW, paint);
	else
		draw_even(scene, letters, plan, at, paint);
}

/* The colour of a dot; beyond the plan the terminal's own. */
static short dot_colour(const struct scene *scene, struct rectangle cells, char letter)
{
	if (!letter)
		return COLOUR_DEFAULT;
	if (scene_is_outlined(scene, cells))
		return colour_outline(scene->level).ground;
	if (is_fenced(sides_among(scene, cells)))
		return colour_fence(scene->level);
	return scene_ground(scene, letter).ground;
}

/* The terminal's own ground cannot be written with: then the other half is. */
static void draw_halves(const struct area *plan, struct place at, short upper, short lower)
{
	if (upper == COLOUR_DEFAULT)
		brush_put(plan, at.y, at.x, lower_half, (struct paint){ .ink = lower,
			.ground = upper });
	else
		brush_put(plan, at.y, at.x, upper_half, (struct paint){ .ink = upper,
			.ground = lower });
}

static void draw_dots(const struct scene *scene, const struct letters *letters,
	const struct area *plan, struct place at)
{
	char letters_here[2];
	short colours[2];
	struct paint paint;

	for (int i = 0; i < 2; i++) {
		letters_here[i] = letter_at(letters, at.x, 2 * at.y + i);
		colours[i] = dot_colour(scene, cells_of(scene, 2, at.x, 2 * at.y + i),
			letters_here[i]);
	}
	if (colours[0] != colours[1]) {
		draw_halves(plan, at, colours[0], colours[1]);
		return;
	}
	paint = scene_ground(scene, letters_here[0]);
	if (letters_here[0] == letters_here[1] && colours[0] == paint.ground)
		draw_even(scene, letters, plan, at, paint);
	else
		brush_put(plan, at.y, at.x, L' ', (struct paint){ .ink = COLOUR_DEFAULT,
			.ground = colours[0] });
}

/* ---- All ------------------------------------------------------------------------------------- */

void plan_far_draw(const struct scene *scene, const struct area *plan, struct place blocks)
{
	struct letters letters = letters_of(scene, blocks);

	for (int y = 0; y < blocks.y; y++)
		for (int x = 0; x < blocks.x; x++) {
			struct place at = { x, y };

			if (rectangle_holds(cells_of(scene, 1, x, y), scene->editor->cursor))
				brush_put(plan, y, x, L' ', colour_cursor(scene->level));
			else if (letters.deep == 1)
				draw_letter(scene, &letters, plan, at);
			else
				draw_dots(scene, &letters, plan, at);
		}
	free(letters.list);
}

/* ---- Layers ---------------------------------------------------------------------------------- */

static wchar_t layer_sign(const struct scene *scene, struct rectangle cells)
{
	char light;

	if (scene->levels)
		return (wchar_t)(L'0' + scene_depth(scene, cells));
	light = scene_light(scene, cells);
	return light ? (wchar_t)light : L' ';
}

void plan_far_draw_layer(const struct scene *scene, const struct area *plan, struct place blocks)
{
	const struct editor *editor = scene->editor;

	for (int y = 0; y < blocks.y; y++)
		for (int x = 0; x < blocks.x; x++) {
			struct rectangle cells = view_block(&editor->view, &editor->plot->ground,
				(struct place){ x, y });
			struct paint paint = rectangle_holds(cells, editor->cursor) ?
				colour_cursor(scene->level) :
				scene_shade(scene, cells, scene_commonest(scene, cells));

			brush_put(plan, y, x, layer_sign(scene, cells), paint);
		}
}
