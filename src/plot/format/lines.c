#include "plot/format/lines.h"
#include "base/utf8.h"

#include <string.h>

#define BYTE_ORDER_MARK "\xEF\xBB\xBF"

static bool line_check(const struct scan *s, size_t most, struct diag *d)
{
	if (s->line == 1 && s->length >= 3 && memcmp(s->text, BYTE_ORDER_MARK, 3) == 0)
		return diag_set_words(d, 1, 1, "a byte order mark", "a file without one");
	for (size_t i = 0; i < s->length;) {
		uint32_t code = 0;
		size_t step = utf8_decode(s->text + i, s->length - i, &code);

		if (i + (step ? step : 1) > most)
			return diag_set_words(d, s->line, (int)most + 1, "a longer line",
				"a line of at most %zu bytes", most);
		if (step == 0)
			return diag_set(d, s->line, (int)i + 1, s->text + i, 1, "UTF-8 text");
		if (code == 0 || code == '\r')
			return diag_set(d, s->line, (int)i + 1, s->text + i, 1,
				"text, each line ended by LF or CR LF");
		i += step;
	}
	return true;
}

enum line_result lines_next(struct lines *lines, size_t most, struct scan *s, struct diag *d)
{
	const char *start = lines->bytes + lines->at, *end;
	size_t left = lines->length - lines->at, length;

	if (left == 0)
		return LINE_END;
	lines->number++;
	end = memchr(start, '\n', left);
	length = end ? (size_t)(end - start) : left;
	lines->at += length + (end != NULL);
	if (end && length && start[length - 1] == '\r')
		length--;
	*s = scan_start(start, length, lines->number);
	if (!line_check(s, most, d))
		return LINE_BAD;
	while (s->length && char_is_blank(start[s->length - 1]))
		s->length--;
	return LINE_READ;
}
