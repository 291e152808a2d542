#include "takeoff/watering/bed_header.h"
#include "base/number.h"

/* The innermost end of a line on that side: what lies there meets as many as can be. */
static nm ends_at(const struct drip *drip, unsigned int side)
{
	nm at = side == HEADER_FROM ? drip->along.from : drip->along.to;

	for (int i = 0; i < drip->count; i++) {
		const struct chord *chord = &drip->lines[i].chord;

		at = side == HEADER_FROM ? nm_most(at, chord->from) : nm_least(at, chord->to);
	}
	return at;
}

static nm apart(nm a, nm b)
{
	return a < b ? b - a : a - b;
}

struct bed_header bed_header_from(const struct drip *drip, struct spot comes_in)
{
	nm along = chord_nearest(&drip->along, drip->is_upright ? comes_in.y : comes_in.x);
	nm across = chord_nearest(&drip->across, drip->is_upright ? comes_in.x : comes_in.y);
	struct bed_header header = { .comes_in = comes_in, .beside = across,
		.side = along - drip->along.from <= drip->along.to - along ? HEADER_FROM :
			HEADER_TO, .across = { across, across } };

	header.at = ends_at(drip, header.side);
	for (int i = 0; i < drip->count; i++) {
		const struct drip_line *line = &drip->lines[i];

		header.across.from = nm_least(header.across.from, line->across);
		header.across.to = nm_most(header.across.to, line->across);
	}
	return header;
}

nm bed_header_tube(const struct bed_header *header, const struct drip *drip, int first, int lines)
{
	bool is_untold = header->side == HEADER_UNTOLD;
	struct chord across = { header->beside, header->beside };
	nm length = 0;

	if (is_untold)
		across = (struct chord){ drip->lines[first].across, drip->lines[first].across };
	else
		length = apart(header->at, chord_nearest(&drip->along, drip->is_upright ?
			header->comes_in.y : header->comes_in.x));
	for (int i = first; i < first + lines; i++) {
		const struct drip_line *line = &drip->lines[i];

		across.from = nm_least(across.from, line->across);
		across.to = nm_most(across.to, line->across);
		length += is_untold ? 0 : apart(header->at, chord_nearest(&line->chord,
			header->at));
	}
	return length + across.to - across.from;
}
