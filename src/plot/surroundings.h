/* What is on a plot and around it besides its ground and its fences: services, houses, what else
 * casts shade, things that are kept, what places are tied to, where deliveries are put down and
 * where water comes from. */
#ifndef PLOT_SURROUNDINGS_H
#define PLOT_SURROUNDINGS_H

#include "plot/block.h"
#include "plot/route.h"

enum service_kind { SERVICE_WATER, SERVICE_GAS, SERVICE_POWER, SERVICE_TELECOM, SERVICE_DRAIN,
	SERVICE_OTHER };
enum { SERVICE_KINDS = SERVICE_OTHER + 1 };

/* A pipe or cable in the ground. Its routes may lie over each other. */
struct service {
	enum service_kind kind;
	bool is_to_lay; /* else it is there already */
	char *name;     /* owned */
	struct block block;
	struct routes routes;
};

struct services {
	struct service *items; /* owned */
	size_t count, capacity;
};

enum { CORNER_MOST = 4096 }; /* how far from the datum the corners of a rectangle may lie */

/* A house, what else casts shade, or something that is kept: a tree with its roots, a wall, a
 * drain. */
struct obstacle {
	char *name; /* owned */
	struct notes notes;
	nm height;       /* above the ground; of a house 0: not told; of what is kept always 0 */
	nm radius;       /* of a circle; 0: it is a rectangle. Only what is kept may be one. */
	struct place at; /* a grid point, the middle of the circle */
	struct rectangle cells; /* of a rectangle, corners -CORNER_MOST..CORNER_MOST */
};

struct obstacles {
	struct obstacle *items; /* owned */
	size_t count, capacity;
};

/* A taped measure from a grid point to something that stays where it is. */
struct tie {
	struct place at;
	char *name; /* of what stays; owned */
	nm length;
};

struct ties {
	struct tie *items; /* owned */
	size_t count, capacity;
};

/* Start from SURROUNDINGS_NONE, end with surroundings_fini. */
struct surroundings {
	struct services services;
	struct obstacles houses, shades, kept;
	struct ties ties;
	bool has_drop;
	struct place drop; /* the grid point where deliveries are put down */
	bool has_tap;
	struct place tap;  /* the grid point where water comes from */
};
#define SURROUNDINGS_NONE ((struct surroundings){ .has_drop = false, .has_tap = false })

void surroundings_fini(struct surroundings *around);
struct surroundings surroundings_copy(const struct surroundings *around);
bool surroundings_equal(const struct surroundings *a, const struct surroundings *b);

/* Appends a service without routes, taking over name; its attributes are unset. */
struct service *services_add(struct services *services, enum service_kind kind, bool is_to_lay,
	char *name);
void services_remove(struct services *services, size_t index);
/* Appends the legs of all services, in their order. */
void services_legs(const struct services *services, struct legs *out);
/* Appends one that is nowhere yet, taking over name. */
struct obstacle *obstacles_add(struct obstacles *obstacles, char *name);
void obstacles_remove(struct obstacles *obstacles, size_t index);
/* Appends a tie, taking over name. */
void ties_add(struct ties *ties, struct place at, char *name, nm length);
void ties_remove(struct ties *ties, size_t index);

/* "water" ... "other", as in the format; NULL at the end. */
extern const char *const service_words[SERVICE_KINDS + 1];
/* By is_to_lay: "existing", "to-lay"; NULL at the end. */
extern const char *const service_states[];
/* What may be read: of a circle's radius, of the height of a house or of shade, of a tie. */
extern const struct value_rule radius_rule, height_rule, tie_rule;

#endif
