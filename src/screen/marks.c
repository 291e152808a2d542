#include "screen/marks.h"

char mark_sign(enum mark mark)
{
	static const char signs[] = { [MARK_NONE] = ' ', [MARK_PEG] = '+', [MARK_FAULT] = '/',
		[MARK_SNAG] = '!', [MARK_CENTRE] = '%', [MARK_UPRIGHT] = '|', [MARK_LEVEL] = '-' };

	return signs[mark];
}

const struct snag *mark_snag(const struct takeoff *takeoff, int x, int y, int *from)
{
	/* Sorted by code, the mirror's last: there may be very many of them. */
	for (int i = *from; i < takeoff->snag_count; i++) {
		const struct snag *snag = &takeoff->snags[i];

		if (snag->code == SNAG_MIRROR_BROKEN)
			break;
		if (snag->cell.x == x && snag->cell.y == y) {
			*from = i + 1;
			return snag;
		}
	}
	return NULL;
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

enum mark mark_at(const struct editor *editor, const struct mirror *mirror, int x, int y)
{
	int from = 0;

	if (editor->is_pegged && editor->peg.x == x && editor->peg.y == y)
		return MARK_PEG;
	if (editor->faults && mirror_is_broken(mirror, &editor->plot.ground, x, y))
		return MARK_FAULT;
	if (mark_snag(&editor->takeoff, x, y, &from))
		return MARK_SNAG;
	return axis_mark(mirror, x, y);
}
