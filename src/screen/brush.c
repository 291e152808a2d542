#include "screen/brush.h"
#include "screen/draw.h"
#include "screen/terminal.h"

#include <langinfo.h>
#include <string.h>

bool brush_has_unicode(void)
{
	return strcmp(nl_langinfo(CODESET), "UTF-8") == 0;
}

bool brush_can_underline(void)
{
	static const int underline = 2; /* of what the terminal cannot have together with colours */
	int lost = tigetnum("ncv");

	return (termattrs() & A_UNDERLINE) &&
		(colour_level() == COLOUR_NONE || lost < 0 || !(lost & underline));
}

/* Curses keeps the pairs it was asked for, and gives them out again. */
static short pair_of(struct paint paint)
{
	bool is_bright = colour_level() == COLOUR_BASIC && paint.ink >= BASIC_COLOURS;

	if (colour_level() == COLOUR_NONE)
		return 0;
	return (short)alloc_pair(paint.ink - (is_bright ? BASIC_COLOURS : 0), paint.ground);
}

/* Of eight colours bold has the brighter one: black would be grey. */
static attr_t attributes_of(struct paint paint)
{
	bool is_basic = colour_level() == COLOUR_BASIC;
	bool is_bold = is_basic ? paint.ink >= BASIC_COLOURS ||
		(paint.is_bold && paint.ink != COLOR_BLACK) : paint.is_bold;

	return (is_bold ? A_BOLD : A_NORMAL) |
		(paint.is_reversed ? A_REVERSE : A_NORMAL) |
		(paint.is_underlined ? A_UNDERLINE : A_NORMAL);
}

static void put(const struct area *area, int row, int column, const wchar_t *words, attr_t sign,
	struct paint paint)
{
	cchar_t cell;

	if (setcchar(&cell, words, attributes_of(paint) | sign, pair_of(paint), NULL) == OK)
		mvadd_wch(area->row + row, area->column + column, &cell);
}

void brush_sign(const struct area *area, int row, int column, const cchar_t *sign,
	struct paint paint)
{
	wchar_t words[CCHARW_MAX + 1];
	attr_t attributes;
	short pair;

	if (getcchar(sign, words, &attributes, &pair, NULL) == OK)
		put(area, row, column, words, attributes & A_ALTCHARSET, paint);
}

void brush_put(const struct area *area, int row, int column, wchar_t character,
	struct paint paint)
{
	put(area, row, column, (const wchar_t[]){ character, L'\0' }, A_NORMAL, paint);
}

void brush_cluster(const struct area *area, int row, int column, const char *text, size_t length,
	struct paint paint)
{
	attr_set(attributes_of(paint), pair_of(paint), NULL);
	draw_cluster(area, row, column, text, length);
	attrset(A_NORMAL);
}
