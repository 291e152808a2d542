#include "report/svg/ink.h"
#include "base/utf8.h"

#include <string.h>

/* XML 1.0 (W3C Recommendation, Extensible Markup Language (XML) 1.0 (Fifth Edition), 2008), [2]
 * Char: tabs and line ends besides, which no text holds. */
static bool is_xml(uint32_t code)
{
	return (code >= 0x20 && code <= 0xd7ff) || (code >= 0xe000 && code <= 0xfffd) ||
		(code >= 0x10000 && code <= 0x10ffff);
}

static const char *escape_of(char c)
{
	switch (c) {
	case '<':
		return "&lt;";
	case '>':
		return "&gt;";
	case '&':
		return "&amp;";
	case '"':
		return "&quot;";
	case '\'':
		return "&#39;";
	default:
		return NULL;
	}
}

void ink_escaped(struct sink *out, const char *words)
{
	size_t left = strlen(words), step;

	for (; left > 0; words += step, left -= step) {
		const char *escape = escape_of(*words);
		uint32_t code;

		step = utf8_decode(words, left, &code);
		if (step == 0 || !is_xml(code)) {
			sink_add(out, "\xef\xbf\xbd");
			step += step == 0;
		} else if (escape) {
			sink_add(out, escape);
		} else {
			sink_add_bytes(out, words, step);
		}
	}
}

static void add_decimal(struct sink *out, int64_t units, int places)
{
	struct text text = TEXT_EMPTY;

	text_add_decimal(&text, units, places);
	sink_add_bytes(out, text.bytes, text.length);
	text_fini(&text);
}

void ink_length(struct sink *out, nm length)
{
	enum { UNIT = 100 }; /* a ten-thousandth of a millimetre */
	nm units = (length < 0 ? length - UNIT / 2 : length + UNIT / 2) / UNIT;

	add_decimal(out, units, 4);
}

void ink_millionths(struct sink *out, int64_t millionths)
{
	add_decimal(out, millionths, 6);
}

void ink_open(struct sink *out, const char *format, ...)
{
	struct text text = TEXT_EMPTY;
	va_list list;

	va_start(list, format);
	text_vprint(&text, format, list);
	va_end(list);
	sink_print(out, "<g %s>\n", text.bytes);
	text_fini(&text);
}

void ink_close(struct sink *out)
{
	sink_add(out, "</g>\n");
}

static void add_attribute(struct sink *out, const char *name, nm length)
{
	sink_print(out, " %s=\"", name);
	ink_length(out, length);
	sink_add(out, "\"");
}

void ink_line(struct sink *out, struct at from, struct at to)
{
	sink_add(out, "<line");
	add_attribute(out, "x1", from.x);
	add_attribute(out, "y1", from.y);
	add_attribute(out, "x2", to.x);
	add_attribute(out, "y2", to.y);
	sink_add(out, "/>\n");
}

void ink_box(struct sink *out, struct box box)
{
	sink_add(out, "<rect");
	add_attribute(out, "x", box.left);
	add_attribute(out, "y", box.top);
	add_attribute(out, "width", box_width(box));
	add_attribute(out, "height", box_height(box));
	sink_add(out, "/>\n");
}

void ink_circle(struct sink *out, struct at middle, nm radius)
{
	sink_add(out, "<circle");
	add_attribute(out, "cx", middle.x);
	add_attribute(out, "cy", middle.y);
	add_attribute(out, "r", radius);
	sink_add(out, "/>\n");
}

void ink_points(struct sink *out, const struct at *points, int count, bool is_closed)
{
	sink_print(out, "<%s points=\"", is_closed ? "polygon" : "polyline");
	for (int i = 0; i < count; i++) {
		sink_add(out, i > 0 ? " " : "");
		ink_length(out, points[i].x);
		sink_add(out, ",");
		ink_length(out, points[i].y);
	}
	sink_add(out, "\"/>\n");
}

void ink_words(struct sink *out, struct at at, struct type type, const char *words)
{
	static const char *const anchors[] = { "", " text-anchor=\"middle\"",
		" text-anchor=\"end\"" };
	nm down = type.size * 7 / 20; /* half as high as a capital letter */

	sink_add(out, "<text");
	add_attribute(out, "x", at.x);
	add_attribute(out, "y", at.y + down);
	add_attribute(out, "font-size", type.size);
	sink_print(out, "%s%s", anchors[type.anchor], type.is_bold ? " font-weight=\"bold\"" : "");
	if (type.is_upright) {
		sink_add(out, " transform=\"rotate(-90 ");
		ink_length(out, at.x);
		sink_add(out, " ");
		ink_length(out, at.y);
		sink_add(out, ")\"");
	}
	sink_add(out, ">");
	ink_escaped(out, words);
	sink_add(out, "</text>\n");
}
