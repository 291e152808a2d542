#include "screen/width.h"
#include "base/utf8.h"

#include <limits.h>
#include <stdlib.h>
#include <string.h>

enum { NO_BREAK_SPACE = 0xa0 };

size_t width_character(const char *text, size_t length, wchar_t *shown, int *columns)
{
	char bytes[MB_LEN_MAX];
	mbstate_t state = { 0 };
	uint32_t code;
	size_t taken = utf8_decode(text, length, &code);

	*shown = !taken ? L'?' : code == NO_BREAK_SPACE ? L' ' : (wchar_t)code;
	*columns = wcwidth(*shown);
	if (*columns < 0 || wcrtomb(bytes, *shown, &state) == (size_t)-1) {
		*shown = L'?';
		*columns = 1;
	}
	return taken ? taken : 1;
}

int width_of(const char *text)
{
	int width = 0;

	for (size_t left = strlen(text); left;) {
		wchar_t shown;
		int columns;
		size_t taken = width_character(text, left, &shown, &columns);

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
		wchar_t shown;
		int width;
		size_t taken = width_character(text + at, length - at, &shown, &width);

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
	if (text[most] == '\0') {
		*next = most;
		return most;
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
