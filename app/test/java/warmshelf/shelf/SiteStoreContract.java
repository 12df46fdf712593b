package warmshelf.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.testing.Decided.done;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.decision.Decision;
import warmshelf.testing.StoreContract;

/** Sites, kept and read again. */
abstract class SiteStoreContract extends StoreContract {
    private static final SiteDraft CELLAR = new SiteDraft("Hall cellar", 2, new Circuit(15, 120), "Key with Ilse");

    private ShelvingStore shelving;
    private SiteStore sites;
    private ShelfCast cast;

    @BeforeEach
    void prepare() {
        shelving = new ShelvingStore(database().sql());
        sites = new SiteStore(database().sql(), audit());
        cast = new ShelfCast(database(), audit());
    }

    @Test
    void a_site_cannot_have_the_name_of_another() {
        sites.add(CELLAR, cast.ilse());

        Decision<UUID> again = sites.add(CELLAR, cast.ilse());

        assertThat(again.refusal()).contains(new ShelfRefusal.SiteNameTaken("Hall cellar"));
        assertThat(shelving.all()).hasSize(1);
    }

    @Test
    void a_change_over_a_newer_one_is_not_made() {
        UUID cellar = done(sites.add(CELLAR, cast.ilse()));
        sites.change(cellar, 1, new SiteDraft("Cellar", 1, new Circuit(20, 120), ""), cast.ilse());

        Decision<UUID> late = sites.change(cellar, 1, CELLAR, cast.ilse());

        assertThat(late).isInstanceOf(Decision.Overtaken.class);
        assertThat(shelving.site(cellar).orElseThrow().name()).isEqualTo("Cellar");
        assertThat(shelving.site(cellar).orElseThrow().version()).isEqualTo(2);
    }

    @Test
    void every_change_leaves_a_line_with_who_did_it_and_a_refused_one_none() {
        UUID cellar = done(sites.add(CELLAR, cast.ilse()));
        sites.change(cellar, 1, CELLAR, cast.ilse());
        sites.add(CELLAR, cast.ilse());

        assertThat(database()
                        .sql()
                        .selectFrom(AUDIT_LINE)
                        .where(AUDIT_LINE.SUBJECT.eq("site"))
                        .fetch())
                .hasSize(2)
                .allSatisfy(line -> {
                    assertThat(line.getMemberId()).isEqualTo(cast.ilse());
                    assertThat(line.getSubjectId()).isEqualTo(cellar.toString());
                });
    }
}
