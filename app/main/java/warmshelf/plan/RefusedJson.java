package warmshelf.plan;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.deser.std.FromStringDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import java.time.LocalDate;
import warmshelf.plan.engine.NoPlaceReason;
import warmshelf.plan.engine.PlaceChange;
import warmshelf.plan.engine.Refused;

/**
 * Why a request has no place, and what would help, as the database keeps it: codes with their figures in SI. Where an older
 * program kept sentences, those are read as they were written.
 */
final class RefusedJson {
    static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(new SimpleModule()
                    .addSerializer(LocalDate.class, ToStringSerializer.instance)
                    .addDeserializer(LocalDate.class, new Dates()))
            .addMixIn(NoPlaceReason.class, ReasonCodes.class)
            .addMixIn(PlaceChange.class, ChangeCodes.class)
            .build();

    private RefusedJson() {}

    record Kept(String request, JsonNode reason, JsonNode change) {
        static Kept of(Refused refused) {
            return new Kept(
                    refused.request(), MAPPER.valueToTree(refused.reason()), MAPPER.valueToTree(refused.change()));
        }

        Refused refused() throws JsonProcessingException {
            return new Refused(
                    request,
                    reason.isTextual()
                            ? new NoPlaceReason.AsWritten(reason.textValue())
                            : MAPPER.treeToValue(reason, NoPlaceReason.class),
                    change.isTextual()
                            ? new PlaceChange.Proposed(change.textValue())
                            : MAPPER.treeToValue(change, PlaceChange.class));
        }
    }

    static String write(Refused refused) {
        try {
            return MAPPER.writeValueAsString(Kept.of(refused));
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a refusal could not be written as text", impossible);
        }
    }

    static Refused read(String text) {
        try {
            return MAPPER.readValue(text, Kept.class).refused();
        } catch (JsonProcessingException broken) {
            throw new IllegalStateException("a refusal was kept that cannot be read", broken);
        }
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "code")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = NoPlaceReason.NoMatWarmEnough.class, name = "no-mat-warm-enough"),
        @JsonSubTypes.Type(value = NoPlaceReason.DarkMatsOnly.class, name = "dark-mats-only"),
        @JsonSubTypes.Type(value = NoPlaceReason.NoLightAfterwards.class, name = "no-light-afterwards"),
        @JsonSubTypes.Type(value = NoPlaceReason.CircuitFull.class, name = "circuit-full"),
        @JsonSubTypes.Type(value = NoPlaceReason.MatsTaken.class, name = "mats-taken"),
        @JsonSubTypes.Type(value = NoPlaceReason.WindowOver.class, name = "window-over"),
        @JsonSubTypes.Type(value = NoPlaceReason.TooFewLitPlaces.class, name = "too-few-lit-places"),
        @JsonSubTypes.Type(value = NoPlaceReason.OutlastsPlan.class, name = "outlasts-plan"),
        @JsonSubTypes.Type(value = NoPlaceReason.MatsOutOfService.class, name = "mats-out-of-service"),
        @JsonSubTypes.Type(value = NoPlaceReason.NotFoundYet.class, name = "not-found-yet"),
        @JsonSubTypes.Type(value = NoPlaceReason.CameLater.class, name = "came-later"),
        @JsonSubTypes.Type(value = NoPlaceReason.TakenOut.class, name = "taken-out"),
        @JsonSubTypes.Type(value = NoPlaceReason.AsWritten.class, name = "as-written")
    })
    private interface ReasonCodes {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "code")
    @JsonSubTypes({
        @JsonSubTypes.Type(value = PlaceChange.StartLater.class, name = "start-later"),
        @JsonSubTypes.Type(value = PlaceChange.StartEarlier.class, name = "start-earlier"),
        @JsonSubTypes.Type(value = PlaceChange.Smaller.class, name = "smaller"),
        @JsonSubTypes.Type(value = PlaceChange.OtherWarmth.class, name = "other-warmth"),
        @JsonSubTypes.Type(value = PlaceChange.LightOtherwise.class, name = "light-otherwise"),
        @JsonSubTypes.Type(value = PlaceChange.JoinWaitingList.class, name = "join-waiting-list"),
        @JsonSubTypes.Type(value = PlaceChange.PlanAnew.class, name = "plan-anew"),
        @JsonSubTypes.Type(value = PlaceChange.NothingProposed.class, name = "nothing-proposed"),
        @JsonSubTypes.Type(value = PlaceChange.Proposed.class, name = "as-written")
    })
    private interface ChangeCodes {}

    private static final class Dates extends FromStringDeserializer<LocalDate> {
        private static final long serialVersionUID = 1;

        Dates() {
            super(LocalDate.class);
        }

        @Override
        protected LocalDate _deserialize(String text, DeserializationContext context) {
            return LocalDate.parse(text);
        }
    }
}
