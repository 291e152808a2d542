#include "screen/borders.h"

/* Without Unicode a thick line would be a sign. */
static bool is_thick(enum border line)
{
	return line == BORDER_FENCE && brush_has_unicode();
}

static bool is_service(enum border line)
{
	return line == BORDER_EXISTING || line == BORDER_TO_LAY;
}

/* Broken where the service is there, double where it is to be laid. */
wchar_t borders_service(enum border line, bool is_upright)
{
	static const wchar_t existing[] = { 0x2026, 0x00a6 }, to_lay[] = { 0x2017, 0x2551 };

	if (!brush_has_unicode())
		return line == BORDER_TO_LAY ? L'^' : L'~';
	return line == BORDER_TO_LAY ? to_lay[is_upright] : existing[is_upright];
}

void borders_upright(const struct area *area, int row, int column, enum border line,
	struct paint paint)
{
	if (is_service(line)) {
		brush_put(area, row, column, borders_service(line, true), paint);
		return;
	}
	paint.is_bold |= line == BORDER_FENCE && !is_thick(line);
	brush_sign(area, row, column, is_thick(line) ? WACS_T_VLINE : WACS_VLINE, paint);
}

enum { UP = 1, DOWN = 2, LEFT = 4, RIGHT = 8, WAYS = 16 };

/* A side that ends here goes through the character: there are no halves. */
static const cchar_t *joint_sign(int ways, bool is_fence)
{
	const cchar_t *const thin[WAYS] = {
		[UP] = WACS_VLINE, [DOWN] = WACS_VLINE, [UP | DOWN] = WACS_VLINE,
		[LEFT] = WACS_HLINE, [RIGHT] = WACS_HLINE, [LEFT | RIGHT] = WACS_HLINE,
		[UP | LEFT] = WACS_LRCORNER, [UP | RIGHT] = WACS_LLCORNER,
		[DOWN | LEFT] = WACS_URCORNER, [DOWN | RIGHT] = WACS_ULCORNER,
		[UP | LEFT | RIGHT] = WACS_BTEE, [DOWN | LEFT | RIGHT] = WACS_TTEE,
		[UP | DOWN | LEFT] = WACS_RTEE, [UP | DOWN | RIGHT] = WACS_LTEE,
		[UP | DOWN | LEFT | RIGHT] = WACS_PLUS,
	};
	const cchar_t *const thick[WAYS] = {
		[UP] = WACS_T_VLINE, [DOWN] = WACS_T_VLINE, [UP | DOWN] = WACS_T_VLINE,
		[LEFT] = WACS_T_HLINE, [RIGHT] = WACS_T_HLINE, [LEFT | RIGHT] = WACS_T_HLINE,
		[UP | LEFT] = WACS_T_LRCORNER, [UP | RIGHT] = WACS_T_LLCORNER,
		[DOWN | LEFT] = WACS_T_URCORNER, [DOWN | RIGHT] = WACS_T_ULCORNER,
		[UP | LEFT | RIGHT] = WACS_T_BTEE, [DOWN | LEFT | RIGHT] = WACS_T_TTEE,
		[UP | DOWN | LEFT] = WACS_T_RTEE, [UP | DOWN | RIGHT] = WACS_T_LTEE,
		[UP | DOWN | LEFT | RIGHT] = WACS_T_PLUS,
	};

	return is_fence ? thick[ways] : thin[ways];
}

void borders_joint(const struct area *area, int row, int column, struct joint joint,
	struct paint paint)
{
	int ways = (joint.up ? UP : 0) | (joint.down ? DOWN : 0) | (joint.left ? LEFT : 0) |
		(joint.right ? RIGHT : 0);
	bool is_fence = joint.up == BORDER_FENCE || joint.down == BORDER_FENCE ||
		joint.left == BORDER_FENCE || joint.right == BORDER_FENCE;

	paint.is_bold |= is_fence && !is_thick(BORDER_FENCE);
	if (ways)
		brush_sign(area, row, column,
			joint_sign(ways, is_fence && is_thick(BORDER_FENCE)), paint);
	else
		brush_put(area, row, column, L' ', paint);
}

/* What stands at the foot of a character: '\0' is a line below a blank. The plainest terminals have
 * neither lines below characters nor, in their fonts, thin blocks. */
static wchar_t foot_of(enum border line)
{
	static const wchar_t thin = 0x2581, thick = 0x2582, half = 0x2584;

	if (is_service(line))
		return borders_service(line, false);
	if (!brush_has_unicode())
		return brush_can_underline() ? L'\0' : line == BORDER_FENCE ? L'=' : L'_';
	if (!brush_can_underline())
		return line == BORDER_FENCE ? half : L'_';
	return line == BORDER_FENCE ? thick : thin;
}

/* With 256 colours a letter stands in the line's place: to underline it, colours are sent anew
 * before and after it, at every stroke beside a wall. */
void borders_below(struct paint *paint, enum border line)
{
	bool is_seen = line != BORDER_NONE && brush_can_underline() &&
		(colour_level() != COLOUR_FINE || !foot_of(line));

	paint->is_underlined |= is_seen;
	paint->is_bold |= is_seen && line == BORDER_FENCE;
}

bool borders_has_foot(enum border line)
{
	return line > BORDER_WALL && foot_of(line);
}

void borders_foot(const struct area *area, int row, int column, enum border line,
	struct paint paint)
{
	wchar_t foot = foot_of(line);

	if (!foot)
		borders_below(&paint, line);
	brush_put(area, row, column, foot ? foot : L' ', paint);
}
