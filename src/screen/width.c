#include "screen/width.h"
#include "base/utf8.h"
#include "editor/field/cluster.h"

#include <limits.h>
#include <stdbool.h>
#include <string.h>

enum { NO_BREAK_SPACE = 0xa0 };

size_t width_character(const char *text, size_t length, wchar_t *shown, int *columns)
{
	char bytes[MB_LEN_MAX];
	mbstate_t state = { 0 };
	uint32_t code;
	size_t taken = utf8_decode(text, length, &code);
	bool is_text = taken && (utf8_is_text(code) || utf8_is_joiner(code));

	*shown = !is_text ? L'?' : code == NO_BREAK_SPACE ? L' ' : (wchar_t)code;
	*columns = wcwidth(*shown);
	if (*columns < 0 || wcrtomb(bytes, *shown, &state) == (size_t)-1) {
		*shown = L'?';
		*columns = 1;
	}
	return taken ? taken : 1;
}

size_t width_cluster(const char *text, size_t length, int *columns)
{
	wchar_t shown;
	uint32_t before = 0, code;
	size_t at = width_character(text, length, &shown, columns), taken;

	utf8_decode(text, length, &before);
	while (at < length && (taken = utf8_decode(text + at, length - at, &code)) != 0 &&
	       cluster_binds(before, code)) {
		int more;

		width_character(text + at, length - at, &shown, &more);
		*columns += more;
		at += taken;
		before = code;
	}
	if (*columns == 0)
		*columns = 1; /* a mark that has no letter */
	return at;
}

int width_of(const char *text)
{
	int width = 0;

	for (size_t left = strlen(text); left;) {
		int columns;
		size_t taken = width_cluster(text, left, &columns);

		width += columns;
		text += taken;
		left -= taken;
	}
	return width;
}

size_t width_cut(const char *text, int columns)
{
	size_t length = strlen(text), at = 0;

	while (at < length) {
		int width;
		size_t taken = width_cluster(text + at, length - at, &width);

		if (width > columns)
			break;
		columns -= width;
		at += taken;
	}
	return at;
}

size_t width_line(const char *text, int columns, size_t *next)
{
	size_t most = width_cut(text, columns), newline = strcspn(text, "\n"), end;

	if (newline <= most) {
		*next = newline + (text[newline] == '\n');
		return newline;
	}
	for (end = most; end && text[end] != ' ';)
		end--;
	if (!end) {
		*next = most;
		return most;
	}
	*next = end + 1;
	return end;
}

int width_lines(const char *text, int columns)
{
	int lines = 0;

	while (*text) {
		size_t next;

		width_line(text, columns, &next);
		text += next;
		lines++;
	}
	return lines;
}

bool width_is_plain(uint32_t code)
{
	static const struct {
		uint32_t first, last;
	} plain[] = {
		{ ' ', '~' }, { 0xa0, 0xac }, { 0xae, 0x02ff }, { 0x0370, 0x0482 },
		{ 0x048a, 0x058f }, { 0x1e00, 0x1fff }, { 0x2010, 0x2027 }, { 0x2030, 0x205e },
		{ 0x2070, 0x22ff }, { 0x2500, 0x25ff },
	};

	for (size_t i = 0; i < sizeof plain / sizeof *plain; i++)
		if (code >= plain[i].first && code <= plain[i].last)
			return true;
	return false;
}
