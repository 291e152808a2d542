#include "editor/marks.h"

char mark_sign(enum mark mark)
{
	static const char signs[] = { [MARK_NONE] = ' ', [MARK_PEG] = '+', [MARK_STAMP] = '*',
		[MARK_IMAGE] = '=', [MARK_RIM] = ':', [MARK_FAULT] = '/', [MARK_SNAG] = '!',
		[MARK_GATE_RIGHT] = '}', [MARK_GATE_BELOW] = '~', [MARK_FENCE_CORNER] = '#',
		[MARK_FENCE_RIGHT] = ']', [MARK_FENCE_BELOW] = '_',
		[MARK_CENTRE] = '%', [MARK_UPRIGHT] = '|', [MARK_LEVEL] = '-' };

	return signs[mark];
}

const struct snag *mark_snag(const struct editor *editor, int x, int y, size_t *from)
{
	const struct snag_list *snags = &editor->takeoff.snags;

	if (editor->is_stale)
		return NULL;
	*from = snag_at(snags, (struct place){ x, y }, *from);
	/* The mirror's are the last of the codes, and have a mark of their own. */
	if (*from == snags->count || snags->list[*from].code == SNAG_MIRROR_BROKEN)
		return NULL;
	return &snags->list[(*from)++];
}

enum mark mark_fence(int sides)
{
	if (sides & GATE_RIGHT)
		return MARK_GATE_RIGHT;
	if (sides & GATE_BELOW)
		return MARK_GATE_BELOW;
	if ((sides & FENCE_RIGHT) && (sides & FENCE_BELOW))
		return MARK_FENCE_CORNER;
	if (sides & FENCE_RIGHT)
		return MARK_FENCE_RIGHT;
	return sides & FENCE_BELOW ? MARK_FENCE_BELOW : MARK_NONE;
}

static enum mark axis_mark(const struct mirror *mirror, int x, int y)
{
	bool upright = x == (mirror->across - 1) / 2, level = y == (mirror->down - 1) / 2;
	bool has_upright = mirror->kind == MIRROR_LEFT_RIGHT || mirror->kind == MIRROR_FOUR_WAY;
	bool has_level = mirror->kind == MIRROR_TOP_BOTTOM || mirror->kind == MIRROR_FOUR_WAY;

	if (mirror->kind == MIRROR_HALF_TURN && upright && level)
		return MARK_CENTRE;
	if (has_upright && upright)
		return MARK_UPRIGHT;
	return has_level && level ? MARK_LEVEL : MARK_NONE;
}

static bool is_corner(const struct rectangle *r, int x, int y)
{
	return (x == r->left || x == r->right) && (y == r->top || y == r->bottom);
}

static bool is_rim(const struct rectangle *r, int x, int y)
{
	return x >= r->left && x <= r->right && y >= r->top && y <= r->bottom &&
		(x == r->left || x == r->right || y == r->top || y == r->bottom);
}

int mark_pegs(const struct editor *editor, struct place pegs[PEGS_MOST])
{
	const struct rectangle *r = &editor->marked;

	if (!editor->is_marked) {
		pegs[0] = editor->peg;
		for (int i = 0; i < editor->bend_count; i++)
			pegs[1 + i] = editor->bends[i];
		return editor->is_pegged ? 1 + editor->bend_count : 0;
	}
	pegs[0] = (struct place){ r->left, r->top };
	pegs[1] = (struct place){ r->right, r->top };
	pegs[2] = (struct place){ r->left, r->bottom };
	pegs[3] = (struct place){ r->right, r->bottom };
	return CORNERS;
}

static bool is_among(const struct place *places, int count, int x, int y)
{
	for (int i = 0; i < count; i++)
		if (places[i].x == x && places[i].y == y)
			return true;
	return false;
}

/* The mark that depends on the cursor, the peg or what is marked, not on the ground. */
static enum mark passing_mark(const struct editor *editor, const struct mirror *mirror, int x,
	int y)
{
	struct place at = editor->cursor;
	struct rectangle stamp = { at.x, at.y, at.x + editor->carried.ground.columns - 1,
		at.y + editor->carried.ground.rows - 1 }; /* where it would lie */
	struct place pegs[PEGS_MOST] = { { 0, 0 } }, images[IMAGES_MOST];
	int count = mirror_cells(mirror, at.x, at.y, images);

	if (is_among(pegs, mark_pegs(editor, pegs), x, y))
		return MARK_PEG;
	if (editor->is_marked && is_corner(&stamp, x, y))
		return MARK_STAMP;
	if (is_among(images + 1, count - 1, x, y))
		return MARK_IMAGE;
	return editor->is_marked && is_rim(&editor->marked, x, y) ? MARK_RIM : MARK_NONE;
}

enum mark mark_at(const struct editor *editor, const struct mirror *mirror, int x, int y)
{
	enum mark passing = passing_mark(editor, mirror, x, y);
	int sides = fence_map_at(&editor->fences, x, y);
	size_t from = 0;

	if (passing != MARK_NONE)
		return passing;
	if (editor->faults && mirror_is_broken(mirror, &editor->plot->ground, x, y))
		return MARK_FAULT;
	if (mark_snag(editor, x, y, &from))
		return MARK_SNAG;
	return sides ? mark_fence(sides) : axis_mark(mirror, x, y);
}
