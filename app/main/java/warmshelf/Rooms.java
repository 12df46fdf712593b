package warmshelf;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import warmshelf.archive.ArchivePages;
import warmshelf.archive.ArchiveStore;
import warmshelf.backup.BackupRoom;
import warmshelf.check.CheckRoom;
import warmshelf.check.HeldRackStore;
import warmshelf.check.MatAlarmNews;
import warmshelf.check.MatAlarmStore;
import warmshelf.check.RoundStore;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.OwnCropPages;
import warmshelf.crop.OwnCropStore;
import warmshelf.crop.VarietyPages;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.duty.DutyRoom;
import warmshelf.exchange.ExchangeRoom;
import warmshelf.finding.prediction.PredictionPages;
import warmshelf.finding.prediction.PredictionReader;
import warmshelf.finding.season.EnergyPricePages;
import warmshelf.finding.season.EnergyPriceStore;
import warmshelf.finding.season.SeasonCsvPages;
import warmshelf.finding.season.SeasonFindingPages;
import warmshelf.finding.season.SeasonStore;
import warmshelf.finding.trial.TrialRoom;
import warmshelf.frost.FrostPages;
import warmshelf.frost.evidence.EvidenceStore;
import warmshelf.frost.evidence.FrostSource;
import warmshelf.frost.files.ImportRoom;
import warmshelf.frost.garden.AcceptedRiskStore;
import warmshelf.frost.garden.GardenRoom;
import warmshelf.group.AdmissionStore;
import warmshelf.group.CoordinationPages;
import warmshelf.group.DoorPages;
import warmshelf.group.FirstEveningNews;
import warmshelf.group.GroupSettingsPages;
import warmshelf.group.GroupStore;
import warmshelf.group.InvitesPages;
import warmshelf.group.JoinPages;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.group.OpeningPages;
import warmshelf.group.OpeningStore;
import warmshelf.group.OwnSettingsPages;
import warmshelf.group.Passphrases;
import warmshelf.group.PeoplePages;
import warmshelf.group.SessionStore;
import warmshelf.group.SignInPages;
import warmshelf.group.SiteCoordinatorStore;
import warmshelf.guide.GuidePages;
import warmshelf.handbook.HandbookPages;
import warmshelf.harvest.HarvestNews;
import warmshelf.harvest.HarvestPages;
import warmshelf.harvest.HarvestStore;
import warmshelf.label.LabelRoom;
import warmshelf.label.paper.QrSquare;
import warmshelf.leaving.LeavingRoom;
import warmshelf.news.NewsRoom;
import warmshelf.operation.OperationRoom;
import warmshelf.paper.PaperRoom;
import warmshelf.passkey.PasskeyParty;
import warmshelf.passkey.PasskeyRoom;
import warmshelf.photo.PacketPhotoPages;
import warmshelf.photo.PhotoStore;
import warmshelf.placing.RequestRoom;
import warmshelf.placing.SetPointPages;
import warmshelf.placing.StayRoom;
import warmshelf.plan.PlanRoom;
import warmshelf.privacy.PrivacyRoom;
import warmshelf.program.ProgramRoom;
import warmshelf.program.WatchedFigures;
import warmshelf.reminder.ReminderRoom;
import warmshelf.response.CropPages;
import warmshelf.search.SearchPages;
import warmshelf.season.SeasonRoom;
import warmshelf.seed.OfferStore;
import warmshelf.seed.SeedRoom;
import warmshelf.shelf.BoardChangeStore;
import warmshelf.shelf.BoardPages;
import warmshelf.shelf.BoardStateStore;
import warmshelf.shelf.BoardStore;
import warmshelf.shelf.MatPages;
import warmshelf.shelf.MatStore;
import warmshelf.shelf.QuarantineStore;
import warmshelf.shelf.RackPages;
import warmshelf.shelf.RackStore;
import warmshelf.shelf.RemovalPages;
import warmshelf.shelf.RemovalStore;
import warmshelf.shelf.RetirementPages;
import warmshelf.shelf.RetirementStore;
import warmshelf.shelf.ShelfPages;
import warmshelf.shelf.ShelfStore;
import warmshelf.shelf.ShelvingStore;
import warmshelf.shelf.SitePages;
import warmshelf.shelf.SiteStore;
import warmshelf.sowing.SeedNews;
import warmshelf.sowing.SowingRoom;
import warmshelf.sowing.SowingStores;
import warmshelf.sowing.TrialPart;
import warmshelf.supply.SupplyPages;
import warmshelf.surplus.SurplusRoom;
import warmshelf.tablet.QrDrawing;
import warmshelf.tablet.TabletReachPages;
import warmshelf.tablet.TabletRoom;
import warmshelf.web.Aside;
import warmshelf.web.Awaiting;
import warmshelf.web.BookPages;
import warmshelf.web.BrowserSession;
import warmshelf.web.HealthPages;
import warmshelf.web.HealthPart;
import warmshelf.web.Pages;
import warmshelf.web.RateLimits;
import warmshelf.web.WebSettings;

/** Every feature's pages, wired once. A new feature adds its lines here. */
final class Rooms {
    private Rooms() {}

    static List<Pages> pages(
            Database database,
            Clock clock,
            SessionStore sessions,
            Passphrases passphrases,
            WebSettings web,
            ReminderRoom.Means means,
            BackupRoom backups) {
        Audit audit = new Audit(clock);
        OwnCropStore ownCrops = new OwnCropStore(database, audit);
        CropCatalogue crops = ownCrops.catalogue();
        MemberStore members = new MemberStore(database, audit);
        LinkStore links = new LinkStore(database, audit);
        GroupStore group = new GroupStore(database, audit);
        AdmissionStore admissions = new AdmissionStore(database, members, links, sessions);
        OpeningStore openings = new OpeningStore(admissions, members, group);
        BrowserSession browsers = new BrowserSession(sessions, web);
        DoorPages door = new DoorPages(links, new RateLimits(clock), audit, browsers);
        ShelvingStore shelving = new ShelvingStore(database.sql());
        RetirementStore retirements = new RetirementStore(database.sql(), audit);
        QuarantineStore quarantine = new QuarantineStore(database.sql(), audit);
        BoardStore board = new BoardStore(
                database.sql(), id -> crops.find(id).map(Crop::name).orElse(id), TrialPart::words);
        FrostSource frost = EvidenceStore.over(database, audit);
        List<Supplier<HealthPart>> health = List.of(backups::health, backups::diskHealth);
        OperationRoom operation = new OperationRoom(
                database,
                health,
                backups.news(),
                backups::newest,
                new OperationRoom.Sends(means.mail() != null, means.push() != null),
                clock);
        List<Pages> pages = new ArrayList<>(List.of(
                new BookPages(),
                new HandbookPages(CommandBook::words),
                new HealthPages(database::answers, health),
                operation.pages(),
                new OpeningPages(openings, passphrases, door, browsers, clock, web.zone()),
                new JoinPages(admissions, passphrases, door, browsers),
                new SignInPages(
                        admissions,
                        members,
                        sessions,
                        passphrases,
                        door,
                        browsers,
                        PasskeyParty.at(web.baseUrl()).isPresent()),
                new OwnSettingsPages(members, admissions, passphrases, door, browsers),
                new GroupSettingsPages(group, backups.news()),
                new ArchivePages(new ArchiveStore(database, audit)),
                new SitePages(shelving, new SiteStore(database.sql(), audit), quarantine, retirements),
                new RetirementPages(shelving, retirements),
                new RackPages(shelving, new RackStore(database.sql(), audit)),
                new RemovalPages(shelving, new RemovalStore(database.sql(), audit)),
                new ShelfPages(shelving, new ShelfStore(database.sql(), audit), quarantine),
                new MatPages(shelving, new MatStore(database.sql(), audit)),
                new FrostPages(frost, new AcceptedRiskStore(database, audit)::of, members::coordinatorNames)));
        pages.addAll(PasskeyRoom.pages(database, audit, sessions, members, passphrases, door, browsers, web.baseUrl()));
        pages.addAll(GardenRoom.pages(database, audit));
        // Asking, placing and the daily round stand on the same stores.
        SowingStores stores = SowingStores.over(database, audit, frost, crops);
        PhotoStore photos = new PhotoStore(database, audit);
        HarvestStore harvests = new HarvestStore(database, audit);
        OfferStore offers = new OfferStore(database, audit, stores.lots(), stores.balances());
        pages.addAll(SeedRoom.pages(
                stores.lots(), stores.balances(), offers, stores.use(), crops, ownCrops.varieties(), photos, harvests));
        pages.add(new PacketPhotoPages(photos, stores.lots()));
        pages.add(new SearchPages(database, crops));
        pages.add(new SetPointPages(database, stores.matDays()));
        PlanRoom plans = new PlanRoom(stores);
        TabletReachPages reach = TabletRoom.reach(database, web);
        pages.addAll(SowingRoom.pages(stores, photos, plans.ownSowings(), harvests, reach));
        pages.addAll(LabelRoom.pages(stores, browsers));
        pages.add(new GuidePages(crops));
        pages.add(new CropPages(crops, stores.emergence(), stores.sowings()));
        pages.add(new OwnCropPages(crops, ownCrops));
        pages.add(new VarietyPages(crops, ownCrops.varieties()));
        pages.add(new SupplyPages(stores));
        pages.add(new HarvestPages(harvests, crops));
        SeasonStore seasons = new SeasonStore(database.sql(), stores.sowings(), stores.entries());
        EnergyPriceStore prices = new EnergyPriceStore(database, audit);
        pages.add(new EnergyPricePages(prices));
        pages.add(new PredictionPages(new PredictionReader(stores, frost)));
        pages.add(new SeasonFindingPages(seasons, crops, harvests, prices));
        pages.add(new SeasonCsvPages(seasons));
        pages.addAll(SeasonRoom.pages(stores, group, frost));
        pages.addAll(TrialRoom.pages(stores));
        pages.addAll(SurplusRoom.pages(stores));
        pages.addAll(StayRoom.pages(stores));
        NewsRoom news = SowingRoom.news(stores);
        pages.addAll(news.pages());
        RoundStore rounds = CheckRoom.rounds(stores);
        pages.add(new BoardPages(
                shelving,
                retirements,
                board,
                new HeldRackStore(database, crops)::marks,
                RequestRoom.unplaced(stores),
                new BoardStateStore(database),
                new BoardChangeStore(database, audit),
                day -> rounds.whole(day).due()));
        DutyRoom duty = new DutyRoom(database, audit, rounds);
        MatAlarmNews alarms = new MatAlarmNews(new MatAlarmStore(database));
        SeedNews seed = new SeedNews(stores);
        Awaiting toDecide =
                Awaiting.of(alarms, plans.awaiting(), seed, duty.awaiting(), ImportRoom.awaiting(database, audit));
        pages.addAll(RequestRoom.pages(stores, plans.requests(), toDecide));
        Aside today = Aside.of(
                plans.today(),
                alarms,
                duty.today(),
                seed,
                new HarvestNews(harvests),
                SeasonRoom.today(stores),
                SurplusRoom.today(stores),
                news.today(),
                new FirstEveningNews(database),
                backups.news(),
                backups.diskNews());
        pages.addAll(CheckRoom.pages(stores, rounds, photos, members, reach, today, clock));
        pages.addAll(TabletRoom.pages(database, audit, members, links, admissions, door, browsers, Rooms::code));
        pages.addAll(duty.pages());
        pages.addAll(ProgramRoom.pages(
                stores, rounds, browsers, clock, new WatchedFigures(operation.figuresType(), operation::figures)));
        pages.addAll(PaperRoom.pages(stores, browsers));
        LeavingRoom leaving = new LeavingRoom(database, audit, members, stores, duty.duties());
        pages.addAll(leaving.pages());
        SiteCoordinatorStore siteCoordinators = new SiteCoordinatorStore(database, audit, members);
        pages.add(new CoordinationPages(members, siteCoordinators));
        pages.add(new InvitesPages(members, links, browsers));
        pages.add(new PeoplePages(members, siteCoordinators, links, browsers, leaving.undoable()));
        pages.addAll(plans.pages(RequestRoom.placements(stores)));
        pages.addAll(ImportRoom.pages(database, audit, clock));
        ExchangeRoom exchange = new ExchangeRoom(stores, clock, members, links, browsers);
        pages.addAll(exchange.pages());
        pages.addAll(PrivacyRoom.pages(
                database,
                audit,
                clock,
                members,
                leaving.leavings(),
                passphrases,
                door,
                browsers,
                exchange::forgetIncoming));
        pages.addAll(ReminderRoom.pages(stores, group, browsers, clock, means));
        return pages;
    }

    private static QrDrawing code(String address) {
        QrSquare code = QrSquare.alone(address);
        return new QrDrawing(code.modules(), code.quiet(), code.path());
    }

    /** What goes on without anybody asking; closed when the server stops. */
    static AutoCloseable work(Database database, Clock clock, ReminderRoom.Means means, String address) {
        Audit audit = new Audit(clock);
        SowingStores stores = SowingStores.over(database, audit, EvidenceStore.over(database, audit));
        return ReminderRoom.start(stores, new GroupStore(database, audit), means, clock, address);
    }
}
