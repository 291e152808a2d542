#include "report/svg/type.h"
#include "base/number.h"
#include "base/utf8.h"

#include <string.h>

enum { PER_SIZE = 1000 }; /* widths are thousandths of the size */

/* As wide as common sans-serif letters are, and a little more. */
static int ascii_width(char c)
{
	if (strchr("ijl.,:;'|!", c))
		return 340;
	if (strchr(" ()[]ftr/I-\"", c))
		return 420;
	if (strchr("MW@%mw", c))
		return 1010;
	return c >= 'A' && c <= 'Z' ? 770 : 650;
}

static int width_of(uint32_t code, const char *bytes)
{
	int columns = utf8_columns(code);

	if (code < 0x80)
		return ascii_width(*bytes);
	return columns == 2 ? 1300 : columns * 800;
}

/* Bytes of the character there, and how wide it is; bytes that are none have a sign of their
 * own. */
static size_t next_character(const char *words, int *width)
{
	uint32_t code = 0xfffd;
	size_t bytes = utf8_decode(words, strlen(words), &code);

	*width = width_of(code, words);
	return bytes ? bytes : 1;
}

static int64_t thousandths(const char *words)
{
	int64_t sum = 0;
	int width;

	while (*words) {
		words += next_character(words, &width);
		sum += width;
	}
	return sum;
}

static int64_t thousandths_of(const char *words, struct type type)
{
	int64_t sum = thousandths(words);

	return type.is_bold ? sum * 9 / 8 : sum;
}

nm type_width(const char *words, struct type type)
{
	return thousandths_of(words, type) * type.size / PER_SIZE;
}

struct type type_fitted(const char *words, struct type type, nm width)
{
	int64_t wide = nm_most(thousandths_of(words, type), 1);

	type.size = nm_most(nm_least(type.size, width * PER_SIZE / wide), NM_PER_MM / 20);
	return type;
}

const char *type_line(const char **rest, nm size, nm width, struct arena *arena)
{
	int64_t room = width * PER_SIZE / size;
	size_t at = 0, broken = 0, step;
	const char *line = *rest + strspn(*rest, " ");
	int wide;

	if (*line == '\0')
		return NULL;
	for (; line[at]; at += step) {
		step = next_character(line + at, &wide);
		if (line[at] == ' ')
			broken = at;
		room -= wide;
		if (room < 0 && at > 0 && line[at] != ' ')
			break;
	}
	if (line[at] == '\0' || broken == 0)
		broken = at;
	*rest = line + broken;
	while (line[broken - 1] == ' ')
		broken--;
	return arena_print(arena, "%.*s", (int)broken, line);
}

nm type_high(nm size)
{
	return size * 5 / 4;
}
