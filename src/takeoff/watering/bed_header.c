#include "takeoff/watering/bed_header.h"
#include "base/number.h"

struct bed_header bed_header_untold(const struct drip *drip)
{
	return (struct bed_header){ .side = HEADER_UNTOLD, .length = drip->header };
}

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
		header.length += apart(header.at,
			chord_nearest(&line->chord, header.at));
	}
	header.length += apart(along, header.at) + header.across.to - header.across.from;
	return header;
}

nm bed_header_way(const struct bed_header *header, const struct drip *drip, int line)
{
	nm across = drip->lines[line].across, along;

	if (header->side == HEADER_UNTOLD)
		return apart(drip->lines[0].across, across);
	along = chord_nearest(&drip->along, drip->is_upright ? header->comes_in.y :
		header->comes_in.x);
	return apart(along, header->at) + apart(header->beside, across);
}
