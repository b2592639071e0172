package wallchart.web;

/** The handlers, by what they are about. */
record Pages(
        Screens screens,
        DocumentPages documents,
        HealthPages health,
        SessionPages session,
        SitePages site,
        RoomPages rooms,
        PackPages packs,
        EquipmentPages equipment,
        EquipmentEntryPages equipmentEntries,
        ChartPages charts,
        ChartPhysicsPages chartPhysics,
        ChangePages changes,
        ChangeEditPages changeEdits,
        ChangeStepPages changeSteps,
        SignaturePages signatures,
        PlanningPages planning,
        PeoplePages people,
        RoomTokenPages roomTokens,
        AuditPages audit,
        SheetPages sheets) {

    static Pages of(Services services, SessionCookie cookie) {
        var answers = new RoomAnswers(services);
        return new Pages(
                new Screens(),
                DocumentPages.load(),
                new HealthPages(services.people()),
                new SessionPages(services.people(), cookie),
                new SitePages(services.site()),
                new RoomPages(services, answers),
                new PackPages(services, answers),
                new EquipmentPages(services),
                new EquipmentEntryPages(services),
                new ChartPages(services),
                new ChartPhysicsPages(services),
                new ChangePages(services),
                new ChangeEditPages(services.desk()),
                new ChangeStepPages(services.desk()),
                new SignaturePages(services.desk(), services.people()),
                new PlanningPages(services),
                new PeoplePages(services.people()),
                new RoomTokenPages(services),
                new AuditPages(services.audit(), services.clock()),
                new SheetPages(services, cookie.isForTls()));
    }
}
