#include "support/lines.h"
#include "base/utf8.h"

#include <check.h>
#include <string.h>
#include <wchar.h>

enum { COLUMNS_MOST = 80 };

static int columns_of(const char *line, size_t length)
{
	int columns = 0;
	uint32_t code;

	for (size_t at = 0; at < length;) {
		size_t bytes = utf8_decode(line + at, length - at, &code);

		ck_assert_msg(bytes > 0 && utf8_is_text(code), "no text: %.20s", line + at);
		columns += wcwidth((wchar_t)code) > 0 ? wcwidth((wchar_t)code) : 0;
		at += bytes;
	}
	return columns;
}

void lines_check(const char *text, const char *what)
{
	for (const char *line = text; *line;) {
		size_t length = strcspn(line, "\n");

		ck_assert_msg(line[length] == '\n', "%s: the last line has no end", what);
		ck_assert_msg(columns_of(line, length) <= COLUMNS_MOST, "%s: %.*s", what,
			(int)length, line);
		ck_assert_msg(length == 0 || line[length - 1] != ' ', "%s: ends in a blank: %.*s",
			what, (int)length, line);
		line += length + 1;
	}
}
