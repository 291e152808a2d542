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

/* There are no halves: a line goes through the character, or turns in it. */
void borders_fences(const struct area *area, int row, int column, bool is_upright, bool is_level,
	struct paint paint)
{
	bool is_corner = is_upright && is_level;

	paint.is_bold |= !is_thick(BORDER_FENCE);
	if (is_thick(BORDER_FENCE))
		brush_sign(area, row, column, is_corner ? WACS_T_LRCORNER :
			is_upright ? WACS_T_VLINE : WACS_T_HLINE, paint);
	else
		brush_sign(area, row, column, is_corner ? WACS_LRCORNER :
			is_upright ? WACS_VLINE : WACS_HLINE, paint);
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
