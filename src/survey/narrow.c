#include "survey/narrow.h"
#include "base/number.h"
#include "base/stop.h"

#include <assert.h>
#include <stdlib.h>

/* Of a cell: it is ground of the class; a square gets there; it is narrow; it is part of a neck; it
 * was gone over; it was told. */
enum { GROUND = 1, COVERED = 2, NARROW = 4, NECK = 8, SEEN = 16, TOLD = 32 };
/* Cells gone over between two looks at the stop flag. */
enum { STEPS = 1024 };

static size_t cell_count(const struct narrow_search *search)
{
	return (size_t)search->columns * (size_t)search->rows;
}

/* ---- Squares, told apart by where they can be moved to --------------------------------------- */

enum { NO_SQUARE = 0, A_SQUARE = 1 };

/* Marks the ground, and in `squares` by its bottom right cell each square that lies in it. The
 * largest square that ends at a cell is one larger than the least of those beside, above and
 * across. */
static void find_squares(struct narrow_search *search, int *squares, const struct survey *survey,
	enum plot_class class)
{
	uint16_t *above = memory_new((size_t)search->columns + 1, sizeof *above);

	for (int y = 0; y < search->rows && !stop_asked(); y++) {
		int across = 0, left = 0, at = y * search->columns, done = 0;

		for (size_t i = survey->row_runs[y]; i < survey->row_runs[y + 1]; i++) {
			const struct run *run = &survey->runs[i];

			for (; done < run->right; done++) {
				int up = above[done];
				int side = run->class != class ? 0 :
					least(left, least(up, across)) + 1;

				left = least(side, search->side);
				across = up;
				above[done] = (uint16_t)left;
				squares[at + done] = side >= search->side ? A_SQUARE :
					NO_SQUARE;
				search->marks[at + done] = run->class == class ? GROUND : 0;
			}
		}
	}
	free(above);
}

/* Numbers that were given, from 1; each leads to itself or to a lower one for the same squares. */
struct numbers {
	int *leads_to;
	size_t count, capacity;
};

static int number_new(struct numbers *numbers)
{
	numbers->leads_to = memory_grow(numbers->leads_to, numbers->count, &numbers->capacity,
		sizeof *numbers->leads_to);
	numbers->leads_to[numbers->count] = (int)numbers->count + 1;
	return (int)++numbers->count;
}

static int number_least(const struct numbers *numbers, int number)
{
	int *to;

	assert(numbers->leads_to); /* a number was given */
	to = numbers->leads_to - 1;
	while (to[number] != number) {
		to[number] = to[to[number]];
		number = to[number];
	}
	return number;
}

/* The number of a square beside one of number `left` and under one of number `above`. */
static int number_joined(struct numbers *numbers, int left, int above)
{
	int one, other;

	if (left == above && left != NO_SQUARE)
		return left;
	if (left == NO_SQUARE && above == NO_SQUARE)
		return number_new(numbers);
	if (left == NO_SQUARE || above == NO_SQUARE)
		return most(left, above);
	one = number_least(numbers, left);
	other = number_least(numbers, above);
	numbers->leads_to[most(one, other) - 1] = least(one, other);
	return least(one, other);
}

/* Squares that can be moved to each other, cell by cell, get one number. */
static void number_squares(const struct narrow_search *search, int *squares)
{
	struct numbers numbers = { .leads_to = NULL };
	int columns = search->columns;

	for (int y = 0; y < search->rows && !stop_asked(); y++) {
		int *row = squares + (size_t)y * (size_t)columns;

		for (int x = 0; x < columns; x++)
			if (row[x] != NO_SQUARE)
				row[x] = number_joined(&numbers, x > 0 ? row[x - 1] : NO_SQUARE,
					y > 0 ? row[x - columns] : NO_SQUARE);
	}
	for (size_t i = 0; i < cell_count(search) && !stop_asked();) {
		size_t end = i + (size_t)columns;

		for (; i < end; i++)
			if (squares[i] != NO_SQUARE)
				squares[i] = number_least(&numbers, squares[i]);
	}
	free(numbers.leads_to);
}

/* ---- What they get to ------------------------------------------------------------------------ */

/* The squares met last while one goes towards the plan's top left: their number, for how many more
 * cells they are over one, and for how many others are too. */
struct met {
	int number, left, mixed;
};

static void meet(struct met *met, int number, int side)
{
	if (met->number != number)
		met->mixed = met->left; /* those before it end sooner */
	met->number = number;
	met->left = side;
}

static void pass(struct met *met)
{
	met->left = most(met->left - 1, 0);
	met->mixed = most(met->mixed - 1, 0);
}

/* numbers: of the squares over each cell that was passed; NO_SQUARE where there are none, or
 * several are. */
static void mark_cell(struct narrow_search *search, int *numbers, int cell,
	const struct met *over)
{
	unsigned char *mark = &search->marks[cell];

	numbers[cell] = over->left > 0 && over->mixed == 0 ? over->number : NO_SQUARE;
	if (!(*mark & GROUND))
		return;
	*mark |= over->left > 0 ? COVERED : NARROW;
	if (over->mixed > 0)
		*mark |= NARROW | NECK;
}

/* Two cells that different squares get to: none gets from one to the other. */
static void mark_pair(struct narrow_search *search, const int *numbers, int one, int other)
{
	if (numbers[one] == NO_SQUARE || numbers[other] == NO_SQUARE ||
		numbers[one] == numbers[other])
		return;
	search->marks[one] |= NARROW | NECK;
	search->marks[other] |= NARROW | NECK;
}

/* Of squares in the same rows, those that overlap can be moved to each other: over a cell there
 * are different ones in different rows only. */
static void mark_row(struct narrow_search *search, int *squares, struct met *columns, int y)
{
	struct met row = { 0, 0, 0 };

	for (int x = search->columns - 1; x >= 0; x--) {
		int cell = y * search->columns + x;

		if (squares[cell] != NO_SQUARE)
			meet(&row, squares[cell], search->side);
		if (row.left > 0)
			meet(&columns[x], row.number, search->side);
		mark_cell(search, squares, cell, &columns[x]);
		if (x + 1 < search->columns)
			mark_pair(search, squares, cell, cell + 1);
		if (y + 1 < search->rows)
			mark_pair(search, squares, cell, cell + search->columns);
		pass(&row);
		pass(&columns[x]);
	}
}

void narrow_begin(struct narrow_search *out, const struct survey *survey, enum plot_class class,
	int side)
{
	int *squares;
	struct met *columns;

	*out = (struct narrow_search){ .columns = survey->columns, .rows = survey->rows,
		.side = least(side, SIDE_MOST + 1) };
	out->marks = memory_new(cell_count(out), sizeof *out->marks);
	squares = memory_new(cell_count(out), sizeof *squares);
	columns = memory_new((size_t)out->columns, sizeof *columns);
	find_squares(out, squares, survey, class);
	number_squares(out, squares);
	for (int y = out->rows - 1; y >= 0 && !stop_asked(); y--)
		mark_row(out, squares, columns, y);
	free(columns);
	free(squares);
}

void narrow_end(struct narrow_search *search)
{
	free(search->marks);
	free(search->waiting);
}

/* ---- Joined cells ---------------------------------------------------------------------------- */

static void wait_for(struct narrow_search *search, int cell)
{
	search->waiting = memory_grow(search->waiting, search->waiting_count,
		&search->waiting_capacity, sizeof *search->waiting);
	search->waiting[search->waiting_count++] = cell;
}

/* What is gone over, and on which of its sides it opens to ground that is not narrow. */
struct patch {
	struct narrow *found;
	int openings; /* one bit a direction */
	bool has_neck, is_known;
};

static void look_beside(struct narrow_search *search, struct patch *patch, int beside,
	int direction)
{
	int marks = search->marks[beside];

	if ((marks & GROUND) && !(marks & NARROW))
		patch->openings |= direction;
	if ((marks & (NARROW | SEEN)) != NARROW)
		return;
	search->marks[beside] |= SEEN;
	wait_for(search, beside);
}

static void take_in(struct narrow_search *search, struct patch *patch, int cell)
{
	int x = cell % search->columns, y = cell / search->columns;
	struct rectangle *r = &patch->found->cells;

	*r = (struct rectangle){ least(r->left, x), least(r->top, y), most(r->right, x),
		most(r->bottom, y) };
	patch->has_neck = patch->has_neck || (search->marks[cell] & NECK);
	patch->is_known = patch->is_known && search->within &&
		(search->within->marks[cell] & TOLD);
	if (x > 0)
		look_beside(search, patch, cell - 1, 1);
	if (x + 1 < search->columns)
		look_beside(search, patch, cell + 1, 2);
	if (y > 0)
		look_beside(search, patch, cell - search->columns, 4);
	if (y + 1 < search->rows)
		look_beside(search, patch, cell + search->columns, 8);
}

static bool is_bay(const struct narrow_search *search, const struct patch *patch)
{
	const struct rectangle *r = &patch->found->cells;
	bool has_one_opening = patch->openings && !(patch->openings & (patch->openings - 1));

	return has_one_opening && !patch->has_neck && r->right - r->left + 1 < search->side &&
		r->bottom - r->top + 1 < search->side;
}

/* Afterwards the cells that were gone over wait still. */
static void go_over(struct narrow_search *search, struct patch *patch, int first)
{
	search->marks[first] |= SEEN;
	search->waiting_count = 0;
	wait_for(search, first);
	for (size_t i = 0; i < search->waiting_count; i++) {
		if (i % STEPS == 0 && stop_asked())
			return;
		take_in(search, patch, search->waiting[i]);
	}
}

bool narrow_next(struct narrow_search *search, struct narrow *found)
{
	for (; search->at < (int)cell_count(search); search->at++) {
		struct patch patch = { .found = found, .is_known = true };
		int x = search->at % search->columns, y = search->at / search->columns;

		if (x == 0 && stop_asked())
			return false;
		if ((search->marks[search->at] & (NARROW | SEEN)) != NARROW)
			continue;
		*found = (struct narrow){ { x, y }, { x, y, x, y } };
		go_over(search, &patch, search->at);
		if (is_bay(search, &patch))
			continue;
		for (size_t i = 0; i < search->waiting_count; i++)
			search->marks[search->waiting[i]] |= TOLD;
		if (!patch.is_known)
			return true;
	}
	return false;
}
