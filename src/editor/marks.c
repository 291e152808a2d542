#include "editor/marks.h"

enum { PEGS_MOST = 1 + BENDS_MOST, CORNERS = 4, FAULTS_SHOWN = 24 };

struct sign mark_sign(enum mark mark)
{
	static const struct sign signs[MARKS] = {
		[MARK_NONE] = { ' ', ' ' }, [MARK_PEG] = { 0x25c6, 'o' },
		[MARK_IMAGE] = { 0x25c7, 'i' }, [MARK_SNAG] = { 0x25b2, 's' },
		[MARK_FAULT] = { 0x2260, 'x' }, [MARK_PLANT] = { 0x2234, '`' },
		[MARK_DROP] = { 0x25bc, 'v' }, [MARK_TIE] = { 0x25ce, 't' },
		[MARK_CENTRE] = { 0x2295, 'c' },
		[MARK_UPRIGHT] = { '|', '|' }, [MARK_LEVEL] = { '-', '-' },
	};

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

/* MARK_NONE where no grid point at the cell has one. */
static enum mark point_mark(const struct plot *plot, struct place cell)
{
	const struct surroundings *around = &plot->details.around;

	if (around->has_drop && place_equal(ground_nearest(&plot->ground, around->drop), cell))
		return MARK_DROP;
	for (size_t i = 0; i < around->ties.count; i++)
		if (place_equal(ground_nearest(&plot->ground, around->ties.items[i].at), cell))
			return MARK_TIE;
	return MARK_NONE;
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

/* The peg and the bends of a run, or the corners of what is marked; returns how many. */
static int pegs_of(const struct editor *editor, struct place pegs[PEGS_MOST])
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

/* More of them would drown the plan. */
static bool has_few_faults(const struct editor *editor)
{
	return editor->faults > 0 && editor->faults <= FAULTS_SHOWN;
}

enum mark mark_at(const struct editor *editor, const struct mirror *mirror, int x, int y)
{
	struct place pegs[PEGS_MOST] = { { 0, 0 } }, images[IMAGES_MOST];
	int count = mirror_cells(mirror, editor->cursor.x, editor->cursor.y, images);
	enum mark point;
	size_t from = 0;

	if (is_among(pegs, pegs_of(editor, pegs), x, y))
		return MARK_PEG;
	if (is_among(images + 1, count - 1, x, y))
		return MARK_IMAGE;
	if (mark_snag(editor, x, y, &from))
		return MARK_SNAG;
	if (has_few_faults(editor) && mirror_is_broken(mirror, &editor->plot->ground, x, y))
		return MARK_FAULT;
	if (around_map_at(&editor->around, x, y) & CELL_PLANT)
		return MARK_PLANT;
	point = point_mark(editor->plot, (struct place){ x, y });
	return point != MARK_NONE ? point : axis_mark(mirror, x, y);
}
