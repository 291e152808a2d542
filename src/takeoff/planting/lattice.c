#include "takeoff/planting/lattice.h"
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

/* A line from where the way starts, `shift` farther in, with as many places as the room has; taken:
 * how much of the room all lines take, for those that start in the middle. */
static struct lattice_line line_in(struct room room, enum lattice_start start, nm step, nm shift,
	nm taken)
{
	nm length = room.high - room.low, in = shift;
	struct lattice_line line = { .count = count_in(length - shift, step) };

	if (start == START_MIDDLE_LOW || start == START_MIDDLE_HIGH)
		in += (length - taken) / 2;
	if (start == START_LOW || start == START_MIDDLE_LOW) {
		line.first = room.low + in;
		line.step = step;
	} else {
		line.first = room.high - in;
		line.step = -step;
	}
	return line;
}

static nm taken_by(int64_t count, nm step, nm shift)
{
	return count == 0 ? 0 : shift + (count - 1) * step;
}

void lattice_make(struct lattice *out, const struct lattice_ground *ground)
{
	const struct lattice_way *across = &ground->across, *down = &ground->down;
	bool is_upright = down->high - down->low > across->high - across->low;
	const struct lattice_way *along = is_upright ? down : across;
	const struct lattice_way *over = is_upright ? across : down;
	nm spacing = ground->spacing, pitch = lattice_pitch(spacing, ground->is_square);
	nm shift = ground->is_square ? 0 : spacing / 2, taken, others;
	struct room rows = room_of(over, spacing), places = room_of(along, spacing);
	nm length = places.high - places.low, width = rows.high - rows.low;
	int64_t row_count = count_in(width, pitch);

	taken = taken_by(count_in(length, spacing), spacing, 0);
	others = taken_by(count_in(length - shift, spacing), spacing, shift);
	if (row_count > 1 && others > taken)
		taken = others;
	*out = (struct lattice){ is_upright,
		line_in(rows, over->start, pitch, 0, taken_by(row_count, pitch, 0)),
		line_in(places, along->start, spacing, 0, taken),
		line_in(places, along->start, spacing, shift, taken) };
}

int64_t lattice_count(const struct lattice *lattice, int64_t row)
{
	return row % 2 == 0 ? lattice->places.count : lattice->others.count;
}

struct spot lattice_place(const struct lattice *lattice, int64_t row, int64_t place)
{
	const struct lattice_line *line = row % 2 == 0 ? &lattice->places : &lattice->others;
	nm over = lattice->rows.first + row * lattice->rows.step;
	nm along = line->first + place * line->step;

	return lattice->is_upright ? (struct spot){ over, along } : (struct spot){ along, over };
}
