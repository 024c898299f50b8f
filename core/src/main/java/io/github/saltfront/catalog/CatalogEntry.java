package io.github.saltfront.catalog;

import io.github.saltfront.quality.Provenance;
import java.util.List;

/** Something a cook can name: a cut, a salt, a liquid, an appliance, a measure. */
public interface CatalogEntry {
    /** Returns the key, in kebab case and unique within its table. */
    String id();

    /** Returns the plain name. */
    String name();

    /** Returns other words for it, in lower case. */
    List<String> aliases();

    /** Returns where its figures come from. */
    Provenance provenance();
}
