/* The layout of what crosses the plugin interface, version 1.0, as C sees it: none of this may ever change.
 */
#include <assert.h>
#include <stddef.h>

#include "abi_layout.h"
