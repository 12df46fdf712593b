package warmshelf.group;

import static warmshelf.db.generated.Tables.ACCESS_LINK;
import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;
import warmshelf.db.Database;

/** Reads which steps of its first evening a group has taken. */
final class FirstEveningStore {
    private final DSLContext sql;

    FirstEveningStore(Database database) {
        this.sql = database.sql();
    }

    /** The steps taken; a step is taken for good, whatever is taken away again later is no concern of that evening. */
    Set<FirstStep> taken() {
        Field<Boolean> people = DSL.field(DSL.or(
                DSL.exists(sql.selectOne().from(ACCESS_LINK).where(ACCESS_LINK.PURPOSE.eq(LinkPurpose.JOIN.stored()))),
                DSL.field(sql.selectCount().from(MEMBER).where(MEMBER.ROLE.ne("tablet")))
                        .gt(1)));
        Map<FirstStep, Field<Boolean>> steps = new EnumMap<>(Map.of(
                FirstStep.SITE,
                any(SITE),
                FirstStep.RACK,
                any(PLACE),
                FirstStep.PEOPLE,
                people,
                FirstStep.DUTY,
                any(DUTY),
                FirstStep.SPACE,
                any(SOWING)));
        Record found = sql.select(steps.values()).fetchSingle();
        Set<FirstStep> taken = EnumSet.noneOf(FirstStep.class);
        int column = 0;
        for (FirstStep step : steps.keySet()) {
            if (Boolean.TRUE.equals(found.get(column++, Boolean.class))) {
                taken.add(step);
            }
        }
        return taken;
    }

    private Field<Boolean> any(Table<?> table) {
        return DSL.field(DSL.exists(sql.selectOne().from(table)));
    }
}
