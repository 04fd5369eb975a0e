-- Whose yards a member sees: their own, and a mentor those that were shared. The pages speak as `snowhum_member` and say
-- in `snowhum.member` for whom; who says nothing sees nothing.

DO $$
BEGIN
    -- Roles are the whole server's: a club beside this one may have made it, even now.
    BEGIN
        CREATE ROLE snowhum_member NOLOGIN;
    EXCEPTION WHEN duplicate_object OR unique_violation THEN
        NULL;
    END;
    IF NOT pg_has_role(current_user, 'snowhum_member', 'MEMBER') THEN
        EXECUTE format('GRANT snowhum_member TO %I', current_user);
    END IF;
END
$$;

CREATE FUNCTION club.me() RETURNS UUID LANGUAGE sql STABLE AS
$$ SELECT NULLIF(current_setting('snowhum.member', true), '')::UUID $$;

-- These look past the policies, which ask them, and tell of nobody but who asks.
CREATE FUNCTION club.own_yards() RETURNS SETOF UUID LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog AS
$$ SELECT id FROM club.yard WHERE owner = club.me() $$;

CREATE FUNCTION club.yards_read() RETURNS SETOF UUID LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog AS
$$
    SELECT club.own_yards()
    UNION
    SELECT share.yard
    FROM club.share
    JOIN club.yard ON yard.id = share.yard
    JOIN club.member AS owner ON owner.id = yard.owner
    JOIN club.member AS mentor ON mentor.id = share.mentor
    WHERE mentor.id = club.me() AND mentor.role = 'mentor' AND mentor.club = owner.club
$$;

CREATE FUNCTION club.own_club() RETURNS UUID LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog AS
$$ SELECT club FROM club.member WHERE id = club.me() $$;

CREATE FUNCTION club.is_mentor_here(asked UUID) RETURNS BOOLEAN LANGUAGE sql STABLE SECURITY DEFINER
SET search_path = pg_catalog AS
$$ SELECT EXISTS (SELECT FROM club.member WHERE id = asked AND role = 'mentor' AND club = club.own_club()) $$;

ALTER TABLE club.club ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.member ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.export ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.yard ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.yard_version ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.share ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.night ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.asked ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.outlook ENABLE ROW LEVEL SECURITY;
ALTER TABLE club.failure ENABLE ROW LEVEL SECURITY;

CREATE POLICY own_club ON club.club FOR SELECT TO snowhum_member USING (id = (SELECT club.own_club()));
CREATE POLICY of_own_club ON club.member FOR SELECT TO snowhum_member USING (club = (SELECT club.own_club()));
CREATE POLICY own ON club.export FOR SELECT TO snowhum_member USING (owner = (SELECT club.me()));
CREATE POLICY readable ON club.yard FOR SELECT TO snowhum_member USING (id IN (SELECT club.yards_read()));
CREATE POLICY readable ON club.yard_version FOR SELECT TO snowhum_member USING (yard IN (SELECT club.yards_read()));
CREATE POLICY readable ON club.asked FOR SELECT TO snowhum_member USING (yard IN (SELECT club.yards_read()));
CREATE POLICY readable ON club.outlook FOR SELECT TO snowhum_member USING (yard IN (SELECT club.yards_read()));
CREATE POLICY readable ON club.failure FOR SELECT TO snowhum_member USING (yard IN (SELECT club.yards_read()));
-- A night alone tells of no yard.
CREATE POLICY every ON club.night FOR SELECT TO snowhum_member USING ((SELECT club.own_club()) IS NOT NULL);
CREATE POLICY of_own_or_to_me ON club.share FOR SELECT TO snowhum_member
    USING (mentor = (SELECT club.me()) OR yard IN (SELECT club.own_yards()));
CREATE POLICY gives ON club.share FOR INSERT TO snowhum_member
    WITH CHECK (yard IN (SELECT club.own_yards()) AND club.is_mentor_here(mentor));
CREATE POLICY takes_back ON club.share FOR DELETE TO snowhum_member USING (yard IN (SELECT club.own_yards()));

GRANT USAGE ON SCHEMA club TO snowhum_member;
GRANT SELECT ON ALL TABLES IN SCHEMA club TO snowhum_member;
GRANT INSERT, DELETE ON club.share TO snowhum_member;
