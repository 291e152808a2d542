#include "plot/mirror.h"
#include "base/number.h"
#include "base/stop.h"

#include <stdlib.h>

const char *mirror_word(enum mirror_kind kind)
{
	return attribute_row(HEAD_MIRROR)->rule.words[kind];
}

struct mirror mirror_of(const struct plot *plot)
{
	const struct block *head = &plot->details.head;
	const struct value *axis = block_value(head, HEAD_AXIS);

	return (struct mirror){
		.kind = (enum mirror_kind)block_number(head, HEAD_MIRROR),
		.across = axis->set ? axis->as.place.x : plot->ground.columns,
		.down = axis->set ? axis->as.place.y : plot->ground.rows,
	};
}

/* Which of the three reflections a kind has, after the thing itself. */
struct reflection {
	bool across, down;
};

static int reflections(enum mirror_kind kind, struct reflection list[IMAGES_MOST])
{
	int count = 0;

	list[count++] = (struct reflection){ false, false };
	if (kind == MIRROR_LEFT_RIGHT || kind == MIRROR_FOUR_WAY)
		list[count++] = (struct reflection){ true, false };
	if (kind == MIRROR_TOP_BOTTOM || kind == MIRROR_FOUR_WAY)
		list[count++] = (struct reflection){ false, true };
	if (kind == MIRROR_HALF_TURN || kind == MIRROR_FOUR_WAY)
		list[count++] = (struct reflection){ true, true };
	return count;
}

static bool rectangle_equal(const struct rectangle *a, const struct rectangle *b)
{
	return a->left == b->left && a->top == b->top && a->right == b->right &&
		a->bottom == b->bottom;
}

int mirror_rectangles(const struct mirror *mirror, struct rectangle r,
	struct rectangle images[IMAGES_MOST])
{
	struct reflection list[IMAGES_MOST];
	int all = reflections(mirror->kind, list), count = 0;

	for (int i = 0; i < all; i++) {
		struct rectangle image = r;
		bool is_new = true;

		if (list[i].across) {
			image.left = mirror->across - 1 - r.right;
			image.right = mirror->across - 1 - r.left;
		}
		if (list[i].down) {
			image.top = mirror->down - 1 - r.bottom;
			image.bottom = mirror->down - 1 - r.top;
		}
		for (int j = 0; j < count; j++)
			is_new = is_new && !rectangle_equal(&images[j], &image);
		if (is_new)
			images[count++] = image;
	}
	return count;
}

int mirror_cells(const struct mirror *mirror, int x, int y, struct place images[IMAGES_MOST])
{
	struct rectangle cells[IMAGES_MOST];
	int count = mirror_rectangles(mirror, (struct rectangle){ x, y, x, y }, cells);

	for (int i = 0; i < count; i++)
		images[i] = (struct place){ cells[i].left, cells[i].top };
	return count;
}

int mirror_legs(const struct mirror *mirror, struct leg leg, struct leg images[IMAGES_MOST])
{
	/* Point x is the left edge of cell x, so points mirror like cells about an axis one half
	 * cell further on. */
	const struct mirror points = { mirror->kind, mirror->across + 1, mirror->down + 1 };
	struct leg f = leg_forward(leg);
	struct rectangle rectangles[IMAGES_MOST];
	int count = mirror_rectangles(&points,
		(struct rectangle){ f.from.x, f.from.y, f.to.x, f.to.y }, rectangles);

	for (int i = 0; i < count; i++)
		images[i] = (struct leg){ { rectangles[i].left, rectangles[i].top },
			{ rectangles[i].right, rectangles[i].bottom } };
	return count;
}

/* A half-turn takes the leg to one of the other direction on the other side of the axis. */
int mirror_leg_lead(const struct mirror *mirror, struct leg leg)
{
	bool is_upright = leg_is_upright(leg), is_half_turn = mirror->kind == MIRROR_HALF_TURN;
	int axis = is_upright ? mirror->down : mirror->across;
	int from = 2 * (is_upright ? leg.from.y : leg.from.x) - axis;
	int to = 2 * (is_upright ? leg.to.y : leg.to.x) - axis;
	int side = is_upright ? 2 * leg.from.x - mirror->across : 2 * leg.from.y - mirror->down;
	int farther = compare(abs(from), abs(to));

	if (mirror->kind == MIRROR_OFF)
		return 1;
	if (!is_half_turn && !(mirror->kind & (is_upright ? MIRROR_TOP_BOTTOM : MIRROR_LEFT_RIGHT)))
		return compare(to, from);
	if (farther != 0 || !is_half_turn)
		return farther;
	return compare(to, from) * -sign(side);
}

bool mirror_has_axis(const struct mirror *mirror, bool is_level)
{
	return mirror->kind == MIRROR_HALF_TURN ||
		(mirror->kind & (is_level ? MIRROR_TOP_BOTTOM : MIRROR_LEFT_RIGHT));
}

int mirror_axis(const struct mirror *mirror, bool is_level)
{
	return is_level ? mirror->down : mirror->across;
}

bool mirror_is_broken(const struct mirror *mirror, const struct ground *ground, int x, int y)
{
	struct place images[IMAGES_MOST];
	int count = mirror_cells(mirror, x, y, images);

	for (int i = 1; i < count; i++)
		if (ground_holds(ground, images[i].x, images[i].y) &&
			ground_cell(ground, images[i].x, images[i].y) != ground_cell(ground, x, y))
			return true;
	return false;
}

/* True for the first cell, in reading order, of its orbit inside the plan. */
static bool is_first(const struct mirror *mirror, const struct ground *ground, int x, int y)
{
	struct place images[IMAGES_MOST];
	int count = mirror_cells(mirror, x, y, images);

	for (int i = 1; i < count; i++)
		if (ground_holds(ground, images[i].x, images[i].y) &&
			(images[i].y < y || (images[i].y == y && images[i].x < x)))
			return false;
	return true;
}

/* A row of the ground and the rows of its images: cell x mirrors to cell start + step * x. */
struct row_images {
	int columns, count;
	const char *row;
	struct {
		const char *row;
		int start, step;
	} images[IMAGES_MOST];
};

static struct row_images row_images(const struct mirror *mirror, const struct ground *ground, int y)
{
	struct reflection list[IMAGES_MOST];
	int all = reflections(mirror->kind, list);
	struct row_images found = { .columns = ground->columns,
		.row = ground_at(ground, 0, y) };

	for (int i = 1; i < all; i++) {
		int image_y = list[i].down ? mirror->down - 1 - y : y, n = found.count;

		if (image_y < 0 || image_y >= ground->rows)
			continue;
		found.images[n].row = ground_at(ground, 0, image_y);
		found.images[n].start = list[i].across ? mirror->across - 1 : 0;
		found.images[n].step = list[i].across ? -1 : 1;
		found.count++;
	}
	return found;
}

/* The first cell of the row, from `from` on, that differs from one of its images; `columns` where
 * there is none. */
static int row_fault(const struct row_images *r, int from)
{
	for (int x = from; x < r->columns; x++) {
		for (int i = 0; i < r->count; i++) {
			int image_x = r->images[i].start + r->images[i].step * x;

			if (image_x >= 0 && image_x < r->columns &&
				r->images[i].row[image_x] != r->row[x])
				return x;
		}
	}
	return r->columns;
}

bool mirror_next_fault(const struct mirror *mirror, const struct ground *ground, struct place from,
	struct place *fault)
{
	int x = from.x;

	for (int y = from.y; y < ground->rows && !stop_asked(); y++, x = 0) {
		struct row_images row = row_images(mirror, ground, y);

		while ((x = row_fault(&row, x)) < ground->columns) {
			if (is_first(mirror, ground, x, y)) {
				*fault = (struct place){ x, y };
				return true;
			}
			x++;
		}
	}
	return false;
}

int64_t mirror_faults(const struct mirror *mirror, const struct ground *ground)
{
	struct place at = { 0, 0 };
	int64_t count = 0;

	if (mirror->kind == MIRROR_OFF)
		return 0;
	while (mirror_next_fault(mirror, ground, at, &at)) {
		count++;
		at.x++;
	}
	return count;
}

/* ---- Sides of the axes ----------------------------------------------------------------------- */

/* The middle of a cell, in half cells. */
static struct place middle_of(int x, int y)
{
	return (struct place){ 2 * x + 1, 2 * y + 1 };
}

/* -1 before, 0 on, 1 after an axis; all in half cells. */
static int half_turn_side(const struct mirror *mirror, struct place at)
{
	int across = compare(at.x, mirror->across);

	return across ? across : compare(at.y, mirror->down);
}

_Static_assert((MIRROR_LEFT_RIGHT ^ MIRROR_TOP_BOTTOM) == MIRROR_FOUR_WAY, "bits of a kind");

/* What a kind asks: across the upright axis, down across the level one, or of the half-turn. */
static bool is_true_of(enum mirror_kind kind, bool across, bool down, bool turned)
{
	if (kind == MIRROR_HALF_TURN)
		return turned;
	return (across || !(kind & MIRROR_LEFT_RIGHT)) && (down || !(kind & MIRROR_TOP_BOTTOM));
}

bool mirror_has_side(const struct mirror *mirror, int x, int y)
{
	struct place at = middle_of(x, y);
	bool across = at.x != mirror->across, down = at.y != mirror->down;

	return is_true_of(mirror->kind, across, down, across || down);
}

/* How far both are after an axis. On the axis `at` is on both sides, `from` counts as before. */
static bool is_same_side(int from, int at)
{
	return at == 0 || (at > 0) == (from > 0);
}

/* Both in half cells. */
static bool is_beside(const struct mirror *mirror, struct place from, struct place at)
{
	bool across = is_same_side(from.x - mirror->across, at.x - mirror->across);
	bool down = is_same_side(from.y - mirror->down, at.y - mirror->down);

	return is_true_of(mirror->kind, across, down,
		is_same_side(half_turn_side(mirror, from), half_turn_side(mirror, at)));
}

bool mirror_is_beside(const struct mirror *mirror, struct place from, int x, int y)
{
	return is_beside(mirror, middle_of(from.x, from.y), middle_of(x, y));
}

bool mirror_is_leg_beside(const struct mirror *mirror, struct place from, struct leg leg)
{
	return is_beside(mirror, middle_of(from.x, from.y),
		(struct place){ leg.from.x + leg.to.x, leg.from.y + leg.to.y });
}

enum mirror_kind mirror_toggled(enum mirror_kind now, enum mirror_kind pressed)
{
	if (pressed == MIRROR_HALF_TURN)
		return now == MIRROR_HALF_TURN ? MIRROR_OFF : MIRROR_HALF_TURN;
	return now == MIRROR_HALF_TURN ? pressed : now ^ pressed;
}
