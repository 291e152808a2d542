/* How long counting may go on: watches (base/stop.h) over the line and the clock. */
#ifndef SCREEN_PATIENCE_H
#define SCREEN_PATIENCE_H

#include "base/stop.h"
#include "screen/keys.h"

#include <stdint.h>

enum until {
	UNTIL_SOON,   /* at most as long as nobody minds, nor for longer than until a key comes */
	UNTIL_KEY,    /* until anything comes on the line */
	UNTIL_ESCAPE  /* until Esc comes; other keys wait */
};

struct patience {
	struct stop_watch watch; /* first */
	struct keys *keys;
	enum until until;
	int64_t soon_ms; /* when UNTIL_SOON ends */
};

/* From here on work is watched, until patience_end; *patience must last as long. A signal that asks
 * for something ends any patience. */
void patience_begin(struct patience *patience, struct keys *keys, enum until until);
void patience_end(void);
/* Whether it has lasted longer than UNTIL_SOON would. */
bool patience_was_long(const struct patience *patience);

#endif
