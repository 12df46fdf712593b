package warmshelf.browser;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import warmshelf.loop.Cellar;
import warmshelf.testing.Browser;

/** What there is to look at in the middle of a spring, and who does. */
record SpringPages(SpringGroup spring) {
    /** Every page there is, with who looks at it. */
    List<PageVisit> all() {
        takeAMatOut();
        List<PageVisit> pages = new ArrayList<>(pagesOfMembers());
        pages.addAll(pagesOfCoordinators());
        pages.addAll(pagesOfStrangers());
        return pages;
    }

    /** So that Racks, Weeks and Today draw one, with what lies there. */
    private void takeAMatOut() {
        if (spring.cellar.coordinator().get("/plans/out-of-service").text().contains("Every mat can be used.")) {
            LocalDate today =
                    LocalDate.ofInstant(spring.cellar.group().clock().instant(), ZoneId.of("America/Chicago"));
            Map<String, String> days = Map.of(
                    "mat",
                    aMat(),
                    "first",
                    today.toString(),
                    "last",
                    today.plusDays(8).toString(),
                    "reason",
                    "The thermostat is broken");
            spring.cellar.coordinator().post("/plans/out-of-service", days);
        }
    }

    private String aMat() {
        return Cellar.first(spring.cellar.coordinator().get("/sites").body(), "/sites/mats/([0-9a-f-]{36})/change");
    }

    /** Its search ends once nothing better can be found. */
    private String proposedPlan() {
        Browser coordinator = spring.cellar.coordinator();
        String plan = coordinator
                .post("/plans", Map.of("seconds", "5", "startingNumber", "1"))
                .location();
        try {
            while (!coordinator.get(plan).header("Refresh").isEmpty()) {
                TimeUnit.MILLISECONDS.sleep(100);
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return plan;
    }

    private String outage() {
        String page = spring.cellar.coordinator().get("/plans/out-of-service").body();
        return "/plans/out-of-service/" + Cellar.first(page, "/out-of-service/([0-9a-f-]{36})/end");
    }

    private List<PageVisit> pagesOfMembers() {
        var member = spring.group().member();
        var idle = spring.group().onDuty();
        return List.of(
                new PageVisit("today, mine", "/today?show=mine", member),
                new PageVisit("today, the round", "/today?show=all", member),
                new PageVisit("today, empty", "/today?show=mine", idle),
                new PageVisit("open by code", "/code", member),
                new PageVisit("open by code, wrong", "/code?code=K7P", member),
                new PageVisit("labels", "/labels", member),
                new PageVisit("labels, again", "/labels?again=yes&open=screen", member),
                new PageVisit("labels, wrong", "/labels?chosen=yes&stock=none&start=0", member),
                new PageVisit("labels, none", "/labels", idle),
                new PageVisit("labels of places", "/labels?of=places", member),
                new PageVisit("label of a sowing", "/labels?of=sowing-" + spring.onTheMat, member),
                new PageVisit("labels printed", spring.labelsPrinted(), member),
                new PageVisit("sizes of labels", "/labels/sizes", member),
                new PageVisit("printers", "/labels/printers", member),
                new PageVisit("reminders", "/reminders", member),
                new PageVisit("passkeys", "/settings/passkeys", member),
                new PageVisit("on paper", "/paper", member),
                new PageVisit("the round on paper", "/paper/round", member),
                new PageVisit("the round typed in", "/paper/round/typing", member),
                new PageVisit("rack plans", "/paper/racks", member),
                new PageVisit("season on paper", "/paper/season", member),
                new PageVisit("season on paper, empty", "/paper/season", idle),
                new PageVisit("hardening off on paper", "/paper/hardening-off", member),
                new PageVisit("poster", "/paper/poster", member),
                new PageVisit("ask", "/ask", member),
                new PageVisit("ask, wrong", "/ask/plan?lot=new&plants=none&crop=", member),
                new PageVisit("plan", "/ask/plan?" + planQuery(), member),
                new PageVisit("plan, too late", "/ask/plan?" + planQuery().replace("crop=pepper", "crop=leek"), member),
                new PageVisit("sowings", "/sowings", member),
                new PageVisit("sowings, empty", "/sowings", idle),
                new PageVisit("crops", "/crops", member),
                new PageVisit("crop", "/crops/pepper", member),
                new PageVisit("supplies", "/supplies", member),
                new PageVisit("season", "/season", member),
                new PageVisit("sowings of earlier seasons", "/files/incoming/new/sowings", member),
                new PageVisit("findings", "/findings", member),
                new PageVisit("predictions", "/findings/predictions", member),
                new PageVisit("seedlings to give away", "/surplus", member),
                new PageVisit("seedlings offered", "/sowings/" + spring.underLight + "/surplus", member),
                new PageVisit("harvest, nothing yet", "/harvest", idle),
                new PageVisit("harvest", "/harvest", member),
                new PageVisit("findings of a crop", "/findings/2027/crops/pepper?by=sowing", member),
                new PageVisit(
                        "photo of a packet",
                        "/packets/new?lot=" + spring.firstLot().replace("/seeds/", ""),
                        member),
                new PageVisit("crop whose reprints disagree", "/crops/eggplant", member),
                new PageVisit("how to", "/how-to", member),
                new PageVisit("how to soak", "/how-to/soak", member),
                new PageVisit("how to sow", "/how-to/sow?crop=pepper-very-hot", member),
                new PageVisit("how to warm", "/how-to/bottom-heat", member),
                new PageVisit("how to light", "/how-to/light", member),
                new PageVisit("how to plant out", "/how-to/plant-out?crop=tomato", member),
                new PageVisit("how to, no such crop", "/how-to/sow?crop=moonflower", member),
                new PageVisit("sowing under light", "/sowings/" + spring.underLight, member),
                new PageVisit("sowing in a bag", "/sowings/" + spring.inTheBag, member),
                new PageVisit("sowing on a mat", "/sowings/" + spring.onTheMat, member),
                new PageVisit("sowing at home", "/sowings/" + spring.unheated, member),
                new PageVisit("sowing refused", "/sowings/" + spring.refused, member),
                new PageVisit("sowing placed", "/sowings/" + spring.placed, member),
                new PageVisit("withdrawal", "/sowings/" + spring.placed + "/withdrawal", member),
                new PageVisit("message about a sowing", "/sowings/" + spring.placed + "/message", member),
                new PageVisit("sowing waiting", "/sowings/" + spring.waiting, member),
                new PageVisit("sowing given up", "/sowings/" + spring.givenUp, member),
                new PageVisit("entry", "/sowings/" + spring.onTheMat + "/entry", member),
                new PageVisit("entry for a bag", "/sowings/" + spring.inTheBag + "/entry", member),
                new PageVisit("racks", "/racks", member),
                new PageVisit("weeks", "/weeks", member),
                new PageVisit("seed box", "/seeds", member),
                new PageVisit("seed box, nothing found", "/seeds?q=turnip", member),
                new PageVisit("lot", spring.firstLot(), member),
                new PageVisit("new lot", "/seeds/new", member),
                new PageVisit("offer of seed", spring.firstLot() + "/offer", member),
                new PageVisit("when others want seed", spring.firstLot() + "/sharing", member),
                new PageVisit("seed is asked for", "/sowings/" + spring.seedAsked + "/seed", member),
                new PageVisit("another lot", "/sowings/" + spring.waiting + "/lot", member),
                new PageVisit("frost", "/frost", member),
                new PageVisit("frost, mistyped", "/frost?country=US&postcode=55899", member),
                new PageVisit("my garden", "/frost/garden", member),
                new PageVisit("areas", "/frost/areas", member),
                new PageVisit("thermometers", "/frost/thermometers", member),
                new PageVisit("new thermometer", "/frost/thermometers/new", member),
                new PageVisit("thermometer", spring.thermometer, member),
                new PageVisit("many nights", spring.thermometer + "/nights", member),
                new PageVisit("shares", "/plans/fairness", member),
                new PageVisit("sites, for a member", "/sites", member),
                new PageVisit("people, for a member", "/people", member),
                new PageVisit("duty, for a member", "/duty", member),
                new PageVisit("settings", "/settings", member),
                new PageVisit("what is known of oneself", "/settings/known", member),
                new PageVisit("erasing oneself", "/settings/erasure", member),
                new PageVisit("what is kept", "/privacy", null),
                new PageVisit("duty, for a member", "/duty", member),
                new PageVisit("my days", "/duty/mine", member),
                new PageVisit("swaps", "/duty/swaps", member),
                new PageVisit("swaps, asked", "/duty/swaps", idle),
                new PageVisit("a new swap", "/duty/swaps/new?turn=" + spring.ownTurn, member),
                new PageVisit("help", "/help", member),
                new PageVisit("numbers", "/numbers", member),
                new PageVisit("not allowed", "/requests", member),
                new PageVisit("not there", "/sowings/00000000-0000-0000-0000-000000000000", member),
                new PageVisit("fault", "/broken", member));
    }

    private List<PageVisit> pagesOfCoordinators() {
        var coordinator = spring.group().coordinator();
        String sites = spring.cellar.coordinator().get("/sites").body();
        List<PageVisit> pages = new ArrayList<>(List.of(
                new PageVisit("new crop", "/new-crop", coordinator),
                new PageVisit("change of a crop", "/crops/pepper/change", coordinator),
                new PageVisit("variety of a crop", "/crops/pepper/varieties", coordinator),
                new PageVisit("supplies, for a coordinator", "/supplies", coordinator),
                new PageVisit("a promise to change", promiseToChange(), coordinator),
                new PageVisit("sowings, one without seed", "/sowings", coordinator),
                new PageVisit("tablets", "/tablets", coordinator),
                new PageVisit("requests", "/requests", coordinator),
                new PageVisit("one request", "/requests/" + spring.waiting, coordinator),
                new PageVisit("request refused", "/requests/" + spring.refused, coordinator),
                new PageVisit("racks to move on", "/racks", coordinator),
                new PageVisit("weeks to move in", "/weeks", coordinator),
                new PageVisit("delete a mat", "/sites/mats/" + aMat() + "/deletion", coordinator),
                new PageVisit("retire a mat", "/sites/mats/" + aMat() + "/retirement", coordinator),
                new PageVisit("stay", "/stays/" + spring.stayToCome(), coordinator),
                new PageVisit("move", "/stays/" + spring.stayToCome() + "/move?from=2027-05-01", coordinator),
                new PageVisit("move, wrong", "/stays/" + spring.stayToCome() + "/move?from=soon", coordinator),
                new PageVisit("areas, for a coordinator", "/frost/areas", coordinator),
                new PageVisit("frost evidence", "/frost/evidence", coordinator),
                new PageVisit("send a file", "/frost/imports/new", coordinator),
                new PageVisit("a file that was read", spring.stations, coordinator),
                new PageVisit("monthly means", "/frost/months", coordinator),
                new PageVisit("files", "/files", coordinator),
                new PageVisit("files, for a member", "/files", spring.group().member()),
                new PageVisit("bring in lots", "/files/incoming/new/lots", coordinator),
                new PageVisit("bring in nights", "/files/incoming/new/nights", coordinator),
                new PageVisit("a table that was looked at", spring.lots, coordinator),
                new PageVisit("season plans", "/plans", coordinator),
                new PageVisit("a season plan", proposedPlan(), coordinator),
                new PageVisit("mats out of service", "/plans/out-of-service", coordinator),
                new PageVisit("a mat out of service", outage(), coordinator),
                new PageVisit(
                        "a mat out of service, for a member",
                        outage(),
                        spring.group().member()),
                new PageVisit("mat", "/mats/" + aMat(), coordinator),
                new PageVisit("sites", "/sites", coordinator),
                new PageVisit("new site", "/sites/new", coordinator),
                new PageVisit("people", "/people", coordinator),
                new PageVisit("invite several", "/people/invites", coordinator),
                new PageVisit("handbook", "/handbook", coordinator),
                new PageVisit("handbook, options", "/handbook/options", coordinator),
                new PageVisit("handbook, commands", "/handbook/commands", coordinator),
                new PageVisit(
                        "coordinator of some sites",
                        "/people/" + spring.group().member().id() + "/sites",
                        coordinator),
                new PageVisit(
                        "somebody leaves", "/people/" + spring.group().member().id() + "/leaving", coordinator),
                new PageVisit("duty", "/duty", coordinator),
                new PageVisit(
                        "days of another",
                        "/duty/mine?member=" + spring.group().member().id(),
                        coordinator),
                new PageVisit("proposal", "/duty/proposal", coordinator),
                new PageVisit("proposal, wrong", "/duty/proposal?days=900&from=soon&site=none", coordinator),
                new PageVisit("swaps, for a coordinator", "/duty/swaps", coordinator),
                new PageVisit("everything in one file", "/archive", coordinator),
                new PageVisit("how the server runs", "/server", coordinator),
                new PageVisit("group settings", "/settings/group", coordinator)));
        for (String form : List.of(
                "/sites/[0-9a-f-]{36}/change",
                "/sites/[0-9a-f-]{36}/racks/new",
                "/sites/racks/[0-9a-f-]{36}/change",
                "/sites/racks/[0-9a-f-]{36}/shelves/new",
                "/sites/shelves/[0-9a-f-]{36}/change",
                "/sites/shelves/[0-9a-f-]{36}/mats/new",
                "/sites/mats/[0-9a-f-]{36}/change")) {
            String path = Cellar.first(sites, "(" + form + ")");
            pages.add(new PageVisit(path.replaceAll("[0-9a-f-]{36}", "…"), path, coordinator));
        }
        return pages;
    }

    private List<PageVisit> pagesOfStrangers() {
        return List.of(
                new PageVisit("sign in", "/sign-in", null),
                new PageVisit("join", spring.group().invitation(false), null),
                new PageVisit("used link", "/join/not-a-link", null),
                new PageVisit("help, not signed in", "/help", null));
    }

    private String promiseToChange() {
        spring.posted(
                "/supplies",
                Map.of("item", "pots", "amount", "30", "whose", "cupboard", "note", SpringGroup.LONG_NOTE));
        return Cellar.first(spring.cellar.coordinator().get("/supplies").body(), "(/supplies/[0-9a-f-]{36}/change)");
    }

    private static String planQuery() {
        StringBuilder query = new StringBuilder();
        Cellar.peppers()
                .forEach((name, value) -> query.append(name)
                        .append('=')
                        .append(value.replace(" ", "+"))
                        .append('&'));
        return query.toString();
    }
}
