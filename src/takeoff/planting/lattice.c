#include "takeoff/planting/lattice.h"
#include "base/number.h"
#include "survey/cover.h"

#include <math.h>

nm lattice_half(nm spacing)
{
	return spacing - spacing / 2;
}

nm lattice_pitch(nm spacing, bool is_square)
{
	nm2 shift = spacing / 2, square = (nm2)spacing * spacing - shift * shift;
	nm pitch;

	if (is_square)
		return spacing;
	pitch = (nm)sqrt((double)square);
	while ((nm2)pitch * pitch > square)
		pitch--;
	while ((nm2)pitch * pitch < square)
		pitch++;
	return pitch;
}

/* What places may take of a way. */
struct room {
	nm low, high;
};

static struct room room_of(const struct lattice_way *way, nm spacing)
{
	nm half = lattice_half(spacing), middle;

	if (way->high - way->low >= 2 * half)
		return (struct room){ way->low + half, way->high - half };
	middle = way->clear_low + (way->clear_high - way->clear_low) / 2;
	return way->clear_low <= way->clear_high ? (struct room){ middle, middle } :
		(struct room){ 0, -1 };
}

static int64_t count_in(nm length, nm step)
{
	return length < 0 ? 0 : length / step + 1;
}

/* How much of a way so many places take. */
static nm taken_by(int64_t count, nm step, nm shift)
{
	return count == 0 ? 0 : shift + (count - 1) * step;
}

/* The first of a line, `shift` farther in than where the way starts; taken: how much of the room
 * all lines take, for those that start in the middle. */
static struct lattice_line line_in(struct room room, enum lattice_start start, nm step, nm shift,
	nm taken)
{
	nm in = shift;

	if (start == START_MIDDLE_LOW || start == START_MIDDLE_HIGH)
		in += (room.high - room.low - taken) / 2;
	if (start == START_LOW || start == START_MIDDLE_LOW)
		return (struct lattice_line){ .first = room.low + in, .step = step };
	return (struct lattice_line){ .first = room.high - in, .step = -step };
}

/* ---- Images ---------------------------------------------------------------------------------- */

/* Rows in the making: how many, and how many places the two kinds of them have. */
struct counts {
	int64_t rows, places, others;
};

/* Whether each row must be its own image, or the last one that of the first. */
struct demand {
	bool along, over;
};

static struct demand demand_of(const struct lattice_ground *ground, bool is_upright,
	const struct counts *counts)
{
	const struct lattice_images *images = &ground->images;

	/* Turned, the rows of one kind may be images of those of the other. */
	if (images->turned && (counts->rows % 2 != 0 || counts->places != counts->others))
		return (struct demand){ true, true };
	return is_upright ? (struct demand){ images->down, images->across } :
		(struct demand){ images->across, images->down };
}

/* Rows that are their own images are one place longer and shorter by turns, with one middle. */
static void shorten_others(struct counts *counts)
{
	counts->others = nm_least(counts->others, nm_most(counts->places - 1, 0));
	if (counts->others == 0)
		counts->rows = nm_least(counts->rows, 1);
}

/* An even number of rows has no row in the middle: the two there are alike, if that fits. */
static void turn_rows(struct lattice *lattice, struct counts *counts, nm width, nm pitch,
	nm spacing)
{
	if (counts->rows % 2 != 0 || counts->rows == 0)
		return;
	if (taken_by(counts->rows - 1, pitch, spacing) > width) {
		counts->rows--;
		return;
	}
	lattice->back = counts->rows / 2;
	lattice->wider = spacing - pitch;
}

void lattice_make(struct lattice *out, const struct lattice_ground *ground)
{
	const struct lattice_way *across = &ground->across, *down = &ground->down;
	bool is_upright = down->high - down->low > across->high - across->low;
	const struct lattice_way *along = is_upright ? down : across;
	const struct lattice_way *over = is_upright ? across : down;
	nm spacing = ground->spacing, pitch = lattice_pitch(spacing, ground->is_square);
	nm shift = ground->is_square ? 0 : spacing / 2, taken;
	struct room rows = room_of(over, spacing), places = room_of(along, spacing);
	nm length = places.high - places.low, width = rows.high - rows.low;
	struct counts counts = { count_in(width, pitch), count_in(length, spacing),
		count_in(length - shift, spacing) };
	struct demand demand = demand_of(ground, is_upright, &counts);

	*out = (struct lattice){ .is_upright = is_upright, .back = INT64_MAX };
	if (!ground->is_square && demand.along)
		shorten_others(&counts);
	if (!ground->is_square && demand.over)
		turn_rows(out, &counts, width, pitch, spacing);
	taken = taken_by(counts.places, spacing, 0);
	if (counts.rows > 1)
		taken = nm_most(taken, taken_by(counts.others, spacing, shift));
	out->rows = line_in(rows, over->start, pitch, 0,
		taken_by(counts.rows, pitch, 0) + out->wider);
	out->places = line_in(places, along->start, spacing, 0, taken);
	out->others = line_in(places, along->start, spacing, shift, taken);
	out->rows.count = counts.rows;
	out->places.count = counts.places;
	out->others.count = counts.others;
}

static const struct lattice_line *line_of(const struct lattice *lattice, int64_t row)
{
	int64_t from_end = row < lattice->back ? row : lattice->rows.count - 1 - row;

	return from_end % 2 == 0 ? &lattice->places : &lattice->others;
}

int64_t lattice_count(const struct lattice *lattice, int64_t row)
{
	return line_of(lattice, row)->count;
}

struct spot lattice_place(const struct lattice *lattice, int64_t row, int64_t place)
{
	const struct lattice_line *line = line_of(lattice, row);
	nm wider = row < lattice->back ? 0 : lattice->wider;
	nm over = lattice->rows.first + row * lattice->rows.step +
		(lattice->rows.step < 0 ? -wider : wider);
	nm along = line->first + place * line->step;

	return lattice->is_upright ? (struct spot){ over, along } : (struct spot){ along, over };
}
