#include "report/drawing/points.h"

#include <ctype.h>
#include <string.h>

static char *point(const struct points *points, int column, int row)
{
	return points->at + (size_t)row * (size_t)points->columns + (size_t)column;
}

char points_at(const struct points *points, int column, int row)
{
	bool is_inside = column >= 0 && column < points->columns && row >= 0 && row < points->rows;

	return is_inside ? *point(points, column, row) : '\0';
}

void points_put(struct points *points, int column, int row, char c)
{
	*point(points, column, row) = c;
}

bool points_are_together(const struct points *points, int column, int count)
{
	for (int i = column; count > 1 && i < column + count; i++)
		if (cuts_join_column(&points->cuts, i))
			return false;
	return true;
}

bool points_is_word(char c)
{
	return c == POINT_NAME || isalnum((unsigned char)c);
}

void points_write(struct points *points, int column, int row, const char *word)
{
	for (; *word; word++)
		points_put(points, column++, row, *word);
}

/* Whether a word has room there: its character `on` over `line`, all others over `ground`. */
static bool has_room(const struct points *points, struct place at, int count, int on, char line,
	char ground)
{
	for (int i = 0; i < count; i++)
		if (points_at(points, at.x + i, at.y) != (i == on ? line : ground))
			return false;
	return points_are_together(points, at.x, count) &&
		!points_is_word(points_at(points, at.x - 1, at.y)) &&
		!points_is_word(points_at(points, at.x + count, at.y));
}

bool points_write_over(struct points *points, int column, int row, const char *word, char over)
{
	if (!has_room(points, (struct place){ column, row }, (int)strlen(word), 0, over, over))
		return false;
	points_write(points, column, row, word);
	return true;
}

bool points_write_across(struct points *points, int column, int row, const char *word, char over)
{
	int last = (int)strlen(word) - 1;

	for (int on = 0; on <= last; on += last > 0 ? last : 1) {
		struct place at = { column - on, row };

		if (has_room(points, at, last + 1, on, over, POINT_FREE)) {
			points_write(points, at.x, at.y, word);
			return true;
		}
	}
	return false;
}

struct place points_middle(const struct points *points, const struct mirror *mirror)
{
	return (struct place){ mirror->across * points->cuts.across,
		mirror->down * points->cuts.down };
}
