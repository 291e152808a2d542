/* Watering: the drip lines of all beds that ask for them, what runs at once, how long, and how much
 * water that takes.
 *
 *	flow     emitters x what one lets out
 *	water    in a week = the depth asked for x the bed's inner area
 *	minutes  in a week = water / flow; rain counts for as much less. A zone runs as long as
 *	         the bed of it that takes longest asks for, each time whole minutes, rounded up
 *	flows    through a zone = its flow x its minutes; to a bed its own flow x those. Sums are
 *	         of what flows
 *	zones    water_zones.h: at most a share of the supply's flow each
 *	header   header.h; zone by zone a tube of its own from the tap, all in one trench. Within a
 *	         raised bed it goes on under the wall and up inside it, then to its lines
 *	         (bed_header.h); each further tube of a bed in several zones goes that way too.
 *	         Without a tap nothing is counted but what lies in beds
 *	trench   as wide as that of a service of water that is to be laid, and as deep
 *	         (services/service_values.h): to the tube's top and `below` deeper, dug and put back
 *	sleeves  one under what the trench crosses, for all its tubes there; and one for each tube
 *	         under the wall of each raised bed it comes to: as long as the wall's base, and
 *	         past it on either side as allowed for, less what the sleeve of the trench in
 *	         which they come there has of that
 *	parts    a tee for each line, each branch within a bed and each bed of a zone after its
 *	         first; an end cap for each line; one more of both where a line is met between its
 *	         ends; stakes at both ends of a line and every 3 ft (1 m); a valve for each
 *	         zone; one timer, filter, pressure regulator and backflow preventer
 *
 * An inch on a square foot is 144/231 = 0.6234 U.S. gallons. Zones and parts: common practice, no
 * published source. A raised bed whose wall is not laid out has no lines. */
#ifndef TAKEOFF_WATERING_WATERING_H
#define TAKEOFF_WATERING_WATERING_H

#include "base/date.h"
#include "takeoff/common/items.h"
#include "takeoff/fence/fences.h"
#include "takeoff/services/sleeves.h"
#include "takeoff/walls/wall.h"
#include "takeoff/watering/bed_header.h"
#include "takeoff/watering/water_zones.h"

/* A bed with drip lines. */
struct watered {
	int region;
	struct drip drip;
	int line_count;   /* of those */
	double area;      /* m2 that is watered */
	double flow;      /* m3/h */
	double minutes, water; /* that it asks for in a usual week; m3 */
	double gets;      /* m3 that flow to it */
	double over;      /* m3 that a zone of its own would spare; 0 where the zone that it is
	                     in runs no more than a tenth longer than it asks for */
	struct bed_header header;
	nm within;        /* header tube from the bed's outline on, with what goes by its wall */
	bool is_reached;  /* the header gets there from the tap */
};

/* What a bed asks for and gets in a week of a month. */
struct water_week {
	int region;
	unsigned int month; /* 0..MONTHS - 1 */
	nm depth;
	double water, gets; /* m3 */
};

/* How long a zone runs in a week of a month. */
struct zone_week {
	int64_t zone;     /* its number */
	unsigned int month;
	nm depth;
	int64_t run, minutes; /* each time; in all */
	double water;     /* m3 that flow */
};

/* The same of all zones, one after the other. */
struct water_month {
	unsigned int month;
	nm depth;
	int64_t minutes;
	double water;
};

/* Sleeves that are laid for the header, as they are listed. */
struct header_sleeve {
	int region;       /* the raised bed whose wall they are under; NO_REGION: the trench's */
	struct sleeve place; /* from and to of those under a wall: where they come to the bed */
	int64_t sleeves;  /* side by side, each as long */
	int64_t tubes;    /* in each, where most lie side by side */
};

struct watering {
	const struct watered *list; /* in region order */
	int count;
	const struct water_zone *zones;
	int zone_count;
	const struct water_week *weeks; /* by bed, then month */
	int week_count;
	const struct zone_week *zone_weeks; /* by zone, then month */
	int zone_week_count;
	const struct water_month *months; /* MONTHS of them, or none */
	int month_count;
	double supply;    /* m3/h */
	bool is_measured; /* the plot or the price book says what the supply gives */
	double most;      /* m3/h that one zone may take */
	int64_t runs;     /* a week */
	int64_t lines, emitters;
	nm tube;          /* of all lines */
	nm stakes_apart;  /* along a line */
	double flow;      /* m3/h of all at once */
	double asked;     /* m3 in a usual week, by all beds */
	int64_t minutes;  /* in a usual week, of all zones */
	double water;     /* m3 that flow in them */
	bool has_tap;
	nm trench;        /* from the tap to the beds */
	nm trench_width, trench_depth; /* 0 without a trench */
	double trench_dug; /* m3 */
	nm header;        /* of all tubes in it, and of those in beds */
	struct legs legs; /* of the trench; in the arena */
	const struct sleeve *sleeves; /* under what it crosses */
	int sleeve_count;
	int64_t walls;    /* sleeves under walls, one for each tube into a raised bed */
	nm sleeve_length; /* of both */
	int64_t tees, ends; /* end caps */
	const struct header_sleeve *header_sleeves; /* both: of the trench, then by bed */
	int header_sleeve_count;
};

/* What of the takeoff it goes by. */
struct water_ground {
	/* Whether the plot or the price book says what the supply gives. */
	bool is_measured;
	const struct walls *walls;
	const struct fences *fences;
	const struct zones *zones;
	const struct cover *cover; /* of the zones */
};

/* Adds the snags water-flow, water-line and water-cut-off, each once for a bed. It can be
 * stopped. */
void watering_find(struct watering *out, const struct basis *basis,
	const struct water_ground *ground);
/* Adds tube, sleeves and fittings. */
void watering_items(struct item_list *items, const struct watering *watering);

extern const struct word month_words[MONTHS];
extern const struct figure_table watered_table, water_week_table, zone_week_table,
	water_month_table, watering_table;

#endif
