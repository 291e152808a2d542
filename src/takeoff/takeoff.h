/* The takeoff of a plot: everything counted, in one plain value that panel, text and JSON show.
 *
 * Lengths are nanometres, areas m2, volumes m3, weights kg. Nothing is rounded here but the whole
 * packs of an order. */
#ifndef TAKEOFF_TAKEOFF_H
#define TAKEOFF_TAKEOFF_H

#include "takeoff/common/areas.h"
#include "takeoff/costs/costs.h"
#include "takeoff/costs/heaps.h"
#include "takeoff/fence/fences.h"
#include "takeoff/fixtures.h"
#include "takeoff/ground/bed_snags.h"
#include "takeoff/ground/dig.h"
#include "takeoff/ground/edging.h"
#include "takeoff/ground/fabric.h"
#include "takeoff/ground/fill.h"
#include "takeoff/ground/lawn.h"
#include "takeoff/ground/levelling.h"
#include "takeoff/ground/liner.h"
#include "takeoff/ground/stone.h"
#include "takeoff/planting/planting.h"
#include "takeoff/services/service_lines.h"
#include "takeoff/walks/barrow_ways.h"
#include "takeoff/walls/cutting.h"
#include "takeoff/walls/wall_levels.h"
#include "takeoff/watering/watering.h"
#include "takeoff/work.h"

struct sun_usual;

struct takeoff {
	struct plot plot; /* in force (prices/in_force.h): what the takeoff is of */
	struct survey survey;
	const struct block *allow; /* of that plot */
	struct embeds embeds;
	struct areas areas;
	struct walls walls;
	struct wall_levels wall_levels;
	struct cuttings cuttings;
	struct fills fills;
	struct zones zones;
	struct levelling levelling;
	struct over_bases over_bases;
	struct fences fences;
	struct service_lines services;
	struct watering watering;
	struct earthwork earthwork;
	struct stones stones;
	struct fabric fabric;
	struct liners liners;
	struct edging edging;
	struct lawns lawns;
	struct fixtures fixtures;
	struct planting planting;
	struct item_list items;
	const struct book *book; /* NULL: none */
	struct costs costs;
	struct heaps heaps;
	struct barrow_ways barrow_ways;
	struct work work;
	struct snag_list snags;  /* by code, then reading order */
	const struct sun_usual *sun; /* hours of sun (sun/sun_usual.h), where something of the
	                              * takeoff rests on them (sun/plant_sun.h); else NULL */
	bool complete;           /* every bed's wall and cap is laid out, every plant placed */
};

/* Computes the takeoff of a plot, with a price book or NULL for none. Pure: the same plot and
 * book give the same takeoff, and nothing is kept between calls. All of it lives in the arena
 * and points into the plot and the book, which must outlive it unchanged. False where it was
 * stopped (base/stop.h): then *out is half-made, to be looked at by nobody, and the arena to be
 * cleared. */
bool takeoff_compute(struct takeoff *out, struct arena *arena, const struct plot *plot,
	const struct book *book);

/* What of a takeoff is shown, in the order of JSON. Rows of a table, or what the views make by
 * hand. */
struct shown {
	const char *key;
	const struct figure_table *table; /* NULL: by hand */
	size_t at;       /* of the rows; of a pointer to them where count_at is not 0 */
	size_t count_at; /* of the int that counts them; 0: see count */
	int count;       /* how many, where they are in the takeoff itself */
	bool is_object;  /* JSON: one object, not an array */
	bool is_optional; /* JSON: no key where no row is shown */
	enum subject subject; /* that these rows belong to; SUBJECT_ANY: none */
	const char *title; /* of a page and a section of its own; NULL: those are made by hand */
};

extern const struct shown takeoff_shown[];
extern const int takeoff_shown_count;

/* Whether any row of the subject is shown. */
bool takeoff_has(const struct takeoff *takeoff, enum subject subject);

/* The rows, *count of them. */
const void *shown_rows(const struct shown *shown, const struct takeoff *takeoff, int *count);
/* Whether any of them is shown. */
bool shown_has_any(const struct shown *shown, const struct takeoff *takeoff);

#endif
