#include "support/pieces.h"

#include <stdlib.h>
#include <string.h>

static int compare_pieces(const void *a, const void *b)
{
	return memcmp(a, b, sizeof(struct piece));
}

static void sort_pieces(struct pieces_laid *pieces)
{
	qsort(pieces->list, (size_t)pieces->count, sizeof *pieces->list, compare_pieces);
}

static nm smaller(nm a, nm b)
{
	return a < b ? a : b;
}

/* Along its side from `from` to `to`, depth to the right. */
static struct piece piece_at(const struct corner *a, const struct corner *b, nm cell, nm from,
	nm to, nm depth)
{
	int x = (b->x > a->x) - (b->x < a->x), y = (b->y > a->y) - (b->y < a->y);
	nm x0 = a->x * cell + x * from, y0 = a->y * cell + y * from;
	nm x1 = a->x * cell + x * to - y * depth, y1 = a->y * cell + y * to + x * depth;

	return (struct piece){ smaller(x0, x1), smaller(y0, y1), x0 + x1 - smaller(x0, x1),
		y0 + y1 - smaller(y0, y1) };
}

struct pieces_laid pieces_laid(const struct beds *beds, int region,
	const struct wall_course *course, nm depth)
{
	const struct survey *survey = &beds->takeoff.survey;
	const struct region *r = &survey->regions[region];
	nm cell = survey->cell, left = r->left * cell, top = r->first_cell.y * cell;
	struct pieces_laid pieces = { NULL, 0 };
	struct arena arena = ARENA_EMPTY;
	struct outline outline;

	outline_trace(&outline, &arena, &beds->plot, survey, region);
	for (int i = 0; i < course->run_count; i++)
		pieces.count += course->runs[i].piece_count;
	pieces.list = calloc((size_t)pieces.count + 1, sizeof *pieces.list);
	pieces.count = 0;
	for (int i = 0; i < course->run_count; i++) {
		const struct wall_run *run = &course->runs[i];
		const struct loop *loop = &outline.loops[run->loop];
		nm at = run->from;

		for (int j = 0; j < run->piece_count; at += run->pieces[j++]) {
			struct piece piece = piece_at(&loop->corners[run->side],
				&loop->corners[(run->side + 1) % loop->count], cell, at,
				at + run->pieces[j], depth);

			pieces.list[pieces.count++] = (struct piece){ piece.left - left,
				piece.top - top, piece.right - left, piece.bottom - top };
		}
	}
	arena_clear(&arena);
	sort_pieces(&pieces);
	return pieces;
}

void pieces_free(struct pieces_laid *pieces)
{
	free(pieces->list);
}

/* Across and down change places. */
static struct piece over_falling(struct piece p)
{
	return (struct piece){ p.top, p.left, p.bottom, p.right };
}

static struct piece left_for_right(struct piece p, nm width)
{
	return (struct piece){ width - p.right, p.top, width - p.left, p.bottom };
}

static struct piece top_for_bottom(struct piece p, nm height)
{
	return (struct piece){ p.left, height - p.bottom, p.right, height - p.top };
}

static struct piece turned(struct piece p, enum turn turn, nm width, nm height)
{
	switch (turn) {
	case TURN_LEFT_RIGHT:
		return left_for_right(p, width);
	case TURN_TOP_BOTTOM:
		return top_for_bottom(p, height);
	case TURN_HALF:
		return top_for_bottom(left_for_right(p, width), height);
	case TURN_QUARTER: /* what was on top is on the right */
		return left_for_right(over_falling(p), height);
	case TURN_QUARTER_BACK:
		return top_for_bottom(over_falling(p), width);
	case TURN_FALLING:
		return over_falling(p);
	case TURN_RISING:
		return top_for_bottom(left_for_right(over_falling(p), height), width);
	case TURN_NONE:
	case TURNS:
		break;
	}
	return p;
}

void pieces_turn(struct pieces_laid *pieces, const struct beds *beds, int region, enum turn turn)
{
	const struct region *r = &beds->takeoff.survey.regions[region];
	nm cell = beds->takeoff.survey.cell;
	nm width = (r->most.x - r->left + 1) * cell, height = (r->most.y - r->first_cell.y + 1) *
		cell;

	for (int i = 0; i < pieces->count; i++)
		pieces->list[i] = turned(pieces->list[i], turn, width, height);
	sort_pieces(pieces);
}

bool pieces_equal(const struct pieces_laid *a, const struct pieces_laid *b)
{
	return a->count == b->count &&
		memcmp(a->list, b->list, (size_t)a->count * sizeof *a->list) == 0;
}

bool pieces_are_own_image(const struct beds *beds, int region, const struct wall_course *course,
	nm depth, enum turn turn)
{
	struct pieces_laid laid = pieces_laid(beds, region, course, depth);
	struct pieces_laid image = pieces_laid(beds, region, course, depth);
	bool is_own;

	pieces_turn(&image, beds, region, turn);
	is_own = pieces_equal(&laid, &image);
	pieces_free(&laid);
	pieces_free(&image);
	return is_own;
}
