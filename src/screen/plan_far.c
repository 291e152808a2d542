#include "screen/plan_far.h"
#include "editor/marks.h"
#include "screen/borders.h"

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

/* ---- Dots ------------------------------------------------------------------------------------ */

/* The colour of a dot; beyond the plan the terminal's own. */
static short dot_colour(const struct scene *scene, struct rectangle cells)
{
	if (cells.bottom < cells.top)
		return COLOUR_DEFAULT;
	if (scene_is_outlined(scene, cells))
		return colour_outline(scene->level).ground;
	if (is_fenced(sides_among(scene, cells)))
		return colour_fence(scene->level);
	return scene_ground(scene, scene_commonest(scene, cells)).ground;
}

/* The terminal's own ground cannot be written with: then the other half is. */
static void draw_dots(const struct area *plan, struct place at, short upper, short lower)
{
	if (upper == lower)
		brush_put(plan, at.y, at.x, L' ', (struct paint){ .ink = COLOUR_DEFAULT,
			.ground = upper });
	else if (upper == COLOUR_DEFAULT)
		brush_put(plan, at.y, at.x, lower_half, (struct paint){ .ink = lower,
			.ground = upper });
	else
		brush_put(plan, at.y, at.x, upper_half, (struct paint){ .ink = upper,
			.ground = lower });
}

/* ---- Letters --------------------------------------------------------------------------------- */

static void draw_letter(const struct scene *scene, const struct area *plan, struct place at,
	struct rectangle cells)
{
	char letter = scene_commonest(scene, cells);
	int sides = sides_among(scene, cells);
	struct paint paint = scene_is_outlined(scene, cells) ? colour_outline(scene->level) :
		scene_ground(scene, letter);

	if (is_fenced(sides))
		borders_joint(plan, at.y, at.x, (struct joint){
			.up = sides & FENCE_RIGHT ? BORDER_FENCE : BORDER_NONE,
			.left = sides & FENCE_BELOW ? BORDER_FENCE : BORDER_NONE }, paint);
	else
		brush_put(plan, at.y, at.x, letter == OPEN_GROUND ? L' ' : (wchar_t)letter, paint);
}

/* ---- All ------------------------------------------------------------------------------------- */

static void draw_block(const struct scene *scene, const struct area *plan, struct place at)
{
	const struct view *view = &scene->editor->view;
	const struct ground *ground = &scene->editor->plot->ground;
	struct rectangle cells = view_block(view, ground, at);

	if (rectangle_holds(cells, scene->editor->cursor))
		brush_put(plan, at.y, at.x, L' ', colour_cursor(scene->level));
	else if (scene->level == COLOUR_NONE || !brush_has_unicode())
		draw_letter(scene, plan, at, cells);
	else
		draw_dots(plan, at, dot_colour(scene, view_dot(view, ground, at, false)),
			dot_colour(scene, view_dot(view, ground, at, true)));
}

void plan_far_draw(const struct scene *scene, const struct area *plan, struct place blocks)
{
	for (int y = 0; y < blocks.y; y++)
		for (int x = 0; x < blocks.x; x++)
			draw_block(scene, plan, (struct place){ x, y });
}
